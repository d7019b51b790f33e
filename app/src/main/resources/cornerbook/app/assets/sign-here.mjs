// Draws what a finger or pen writes, and puts its path into the form: whole numbers on a plane of 1000 by 300.

const WIDTH = 1000;
const HEIGHT = 300;
/** Points nearer than this to the one before add nothing to see. */
const STEP = 4;
const MOST = 58000;

/** @param {Element} place */
export function sign(place) {
  const plane = place.querySelector('svg');
  const path = place.querySelector('path');
  const field = place.querySelector('input');
  const again = place.querySelector('button');
  if (!plane || !path || !field || !again) {
    return;
  }
  let drawn = '';
  /** @type {{x: number, y: number} | null} */
  let at = null;

  /** @param {PointerEvent} event */
  const point = event => {
    const box = plane.getBoundingClientRect();
    const on = (/** @type {number} */ share, /** @type {number} */ size) =>
      Math.min(size - 1, Math.max(0, Math.round(share * size)));
    return {
      x: on((event.clientX - box.left) / box.width, WIDTH),
      y: on((event.clientY - box.top) / box.height, HEIGHT),
    };
  };
  const show = () => {
    path.setAttribute('d', drawn);
    field.value = drawn;
  };

  plane.addEventListener('pointerdown', event => {
    event.preventDefault();
    plane.setPointerCapture(event.pointerId);
    at = point(event);
    if (drawn.length < MOST) {
      drawn += `M${at.x} ${at.y}`;
      show();
    }
  });
  plane.addEventListener('pointermove', event => {
    if (!at || drawn.length >= MOST) {
      return;
    }
    const next = point(event);
    if (Math.hypot(next.x - at.x, next.y - at.y) >= STEP) {
      drawn += `L${next.x} ${next.y}`;
      at = next;
      show();
    }
  });
  const end = () => {
    at = null;
  };
  plane.addEventListener('pointerup', end);
  plane.addEventListener('pointercancel', end);
  again.addEventListener('click', () => {
    drawn = '';
    show();
  });
}

document.querySelectorAll('[data-sign]').forEach(sign);

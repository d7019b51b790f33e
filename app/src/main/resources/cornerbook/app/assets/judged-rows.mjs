// Cars whose verdicts were old when the page was made are shown anew as soon as they are judged. A page asks for those that are
// left, less often each time, and not while nobody sees it; when none is left it asks no more.
const firstWait = 1000;
const longestWait = 30000;

const left = () => /** @type {HTMLElement[]} */ ([...document.querySelectorAll("li[data-old]")]);

/** @param {HTMLElement} row */
const show = (row) => {
  const old = left().find((each) => each.dataset.old === row.dataset.car);
  const link = row.querySelector("a");
  // The link stays, and with it the place of the keyboard.
  old?.querySelector("a")?.replaceChildren(...(link ? link.childNodes : []));
  old?.removeAttribute("data-old");
};

const ask = async () => {
  const query = new URLSearchParams(left().map((row) => ["car", row.dataset.old ?? ""]));
  const answer = await fetch(`/judged-cars?${query}`);
  if (answer.ok) {
    const rows = new DOMParser().parseFromString(await answer.text(), "text/html");
    rows.querySelectorAll("li").forEach(show);
  }
};

/** @param {number} wait in milliseconds, of which a part is by chance: many pages that were opened together ask one by one */
const later = (wait) => setTimeout(async () => {
  if (!document.hidden) {
    // Without an answer the page stays as it is, with its age.
    await ask().catch(() => undefined);
  }
  if (left().length > 0) {
    later(Math.min(2 * wait, longestWait));
  }
}, wait * (0.75 + Math.random() / 2));

if (left().length > 0) {
  later(firstWait);
}

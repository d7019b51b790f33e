/**
 * Makes an element. Text is always text, never markup.
 *
 * @template {keyof HTMLElementTagNameMap} N
 * @param {N} name
 * @param {bay.Properties<HTMLElementTagNameMap[N]>} [properties]
 * @param {...bay.Child} children
 */
export function h(name, properties, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(/** @type {Record<string, any>} */ (properties ?? {}))) {
    if (key.startsWith("on")) {
      element.addEventListener(key.slice(2), value);
    } else if (key in element && key !== "list") {
      Object.assign(element, { [key]: value });
    } else {
      element.setAttribute(key, value);
    }
  }
  element.append(...children.flatMap((child) => child || child === "" ? [child] : []));
  return element;
}

/**
 * A sentence with a mark beside it.
 *
 * @param {string} kind
 * @param {...bay.Child} words
 */
export const note = (kind, ...words) => h("p", { className: `note ${kind}` }, ...words);

/**
 * What the page has under an id.
 *
 * @param {string} id
 */
export function byId(id) {
  const element = document.getElementById(id);
  if (!element) {
    throw new Error(`The page has no ${id}`);
  }
  return element;
}

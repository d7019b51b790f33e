// Makes elements. Text is always text, never markup.
export function h(name, properties = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(properties)) {
    if (key.startsWith("on")) {
      element.addEventListener(key.slice(2), value);
    } else if (key in element && key !== "list") {
      element[key] = value;
    } else {
      element.setAttribute(key, value);
    }
  }
  element.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

/** A sentence with a mark beside it. */
export const note = (kind, ...words) => h("p", { className: `note ${kind}` }, ...words);

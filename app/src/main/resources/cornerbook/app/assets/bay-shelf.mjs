// Where the set goes that comes off: the free place that the server knows, and one tap once it lies there. Without a network nothing is
// shown: another tablet may have taken the place.
import { ask } from "./bay-ask.mjs";
import { h, note } from "./bay-dom.mjs";
import { person } from "./bay-person.mjs";
import { say } from "./bay-words.mjs";

/** @param {bay.View} view */
export function shelf(view) {
  const { visit } = view;
  const address = `/bay/visits/${encodeURIComponent(visit.id)}/shelf`;
  const place = h("div", { className: "shelf", ariaLive: "polite" });
  /** @param {bay.Shelf} shelf */
  const show = ({ tag, place: name, lies, sentence }) => {
    const set = visit.sheet.wheels[tag ?? ""]?.setName ?? tag ?? "";
    place.replaceChildren(
      sentence ? note("wrong", sentence) : "",
      !tag ? "" : lies ? note("book", say("set-lies-at", { set, place: name })) : name ? h("p", {}, say("set-goes-to", { set, place: name }), " ", h("button", { type: "button", onclick: () => put(name) }, say("put-there"))) : h("p", { className: "ghost" }, say("no-place-for", { set })),
    );
  };
  /** @param {string} name */
  const put = async (name) => {
    const answer = await ask(address, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ place: name, person: person() }) }).catch(() => null);
    if (answer) {
      show(await answer.json());
    } else {
      place.prepend(note("wrong", say("not-put")));
    }
  };
  const look = async () => {
    const answer = await ask(`${address}.json`).catch(() => null);
    if (answer?.ok) {
      show(await answer.json());
    }
  };
  let leaves = "";
  view.onUpdate(() => {
    const now = JSON.stringify(visit.state.leftOn);
    if (now !== leaves) {
      leaves = now;
      void look();
    }
  });
  return place;
}

// While work goes on in the background (the book is taken out, a plan is searched for), its page shows how far that is, once a second
// and not while nobody sees it. When it is done, the whole page is asked for: it offers what came of it.
const wait = 1000;

const look = async () => {
  const answer = await fetch(location.href);
  if (!answer.ok) {
    return;
  }
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const now = page.querySelector("#work progress");
  const shown = /** @type {HTMLProgressElement | null} */ (document.querySelector("#work progress"));
  const words = page.querySelector("#work p");
  if (!now || !shown || !words) {
    location.reload();
    return;
  }
  shown.value = Number(now.getAttribute("value"));
  shown.max = Number(now.getAttribute("max"));
  const line = document.querySelector("#work p");
  if (line) {
    line.textContent = words.textContent;
  }
};

setInterval(() => {
  if (!document.hidden) {
    // Without an answer the page stays as it is.
    look().catch(() => undefined);
  }
}, wait);

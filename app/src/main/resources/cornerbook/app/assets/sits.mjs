// Who sits at this desk is known once in each browser, as on its bay sheets, and goes with each answer of a page.
const place = document.getElementById("sits");
const asks = place instanceof HTMLInputElement ? place : null;

const tell = () => {
  const name = (asks ? asks.value : (localStorage.getItem("person") ?? "")).trim();
  if (name !== "") {
    localStorage.setItem("person", name);
  }
  document.querySelectorAll("input.sits").forEach((each) => each instanceof HTMLInputElement && (each.value = name));
};

if (asks) {
  asks.value = localStorage.getItem("person") ?? "";
  asks.addEventListener("input", tell);
}
// A page that comes back from the browser's memory has what was typed.
addEventListener("pageshow", tell);
tell();

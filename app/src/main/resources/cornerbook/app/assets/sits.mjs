// Who sits at this desk is known once in each browser, as on its bay sheets, and goes with each answer of the page.
const place = document.getElementById("sits");

if (place instanceof HTMLInputElement) {
  place.value = localStorage.getItem("person") ?? "";
  const tell = () => {
    const name = place.value.trim();
    if (name !== "") {
      localStorage.setItem("person", name);
    }
    document.querySelectorAll("input.sits").forEach((each) => each instanceof HTMLInputElement && (each.value = name));
  };
  place.addEventListener("input", tell);
  // A page that comes back from the browser's memory has what was typed.
  addEventListener("pageshow", tell);
  tell();
}

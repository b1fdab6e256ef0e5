// Without this script the buttons send the form and come back with the sum; with it they only change the number.
(() => {
  "use strict";
  const MOST = 1000000;
  const number = document.getElementById("more");
  for (const button of document.querySelectorAll("button[data-step]")) {
    button.addEventListener("click", (event) => {
      event.preventDefault();
      const before = /^-?\d{1,7}$/.test(number.value.trim()) ? Number(number.value.trim()) : 0;
      number.value = String(Math.max(0, Math.min(MOST, before + Number(button.dataset.step))));
    });
  }
  // A site is chosen with one tap.
  const place = document.getElementById("place");
  if (place) {
    place.addEventListener("change", () => place.form.requestSubmit());
  }
})();

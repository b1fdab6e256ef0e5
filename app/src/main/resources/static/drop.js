// A file dropped on the form is chosen as if by its button.
(() => {
  "use strict";
  const zone = document.querySelector("[data-drop]");
  const file = zone && zone.querySelector('input[type="file"]');
  if (!file) {
    return;
  }
  zone.addEventListener("dragover", (event) => {
    event.preventDefault();
    zone.classList.add("over");
  });
  zone.addEventListener("dragleave", () => zone.classList.remove("over"));
  zone.addEventListener("drop", (event) => {
    event.preventDefault();
    zone.classList.remove("over");
    if (event.dataTransfer.files.length > 0) {
      file.files = event.dataTransfer.files;
    }
  });
})();

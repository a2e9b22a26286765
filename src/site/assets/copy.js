// Puts a button beside each text made for pasting, which copies it whole. The texts can be read and marked without it.
(function () {
  "use strict";
  for (const text of document.querySelectorAll("[data-copy]")) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "sort";
    button.textContent = "Copy " + text.dataset.copy;
    const said = document.createElement("span");
    said.setAttribute("role", "status");
    const line = document.createElement("p");
    line.append(button, " ", said);
    text.before(line);
    button.addEventListener("click", async function () {
      said.textContent = (await copied(text)) ? "Copied." : "Marked: copy it with the keyboard.";
    });
  }

  async function copied(text) {
    try {
      await navigator.clipboard.writeText(text.textContent);
      return true;
    } catch {
      // Not allowed here, or not a secure address: the old way, which leaves the text marked.
      const selection = getSelection();
      selection.selectAllChildren(text);
      return document.execCommand("copy");
    }
  }
})();

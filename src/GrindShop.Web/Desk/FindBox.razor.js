// The desk by keyboard: "/" goes to the find box, arrows walk the orders, a letter presses the button of the order's line that names it;
// Enter in the find box is answered by the box itself.
const links = () => [...document.querySelectorAll("#results a.order, #inbox a.order, #calls a.order")];
const act = (at, letter) => links().includes(at) ? at.closest("tr, li").querySelector(`[data-key="${CSS.escape(letter)}"]`) : null;

function step(from, by) {
    const all = links(), at = all.indexOf(from) + by;
    if (at < 0) document.getElementById("find").focus();
    else all[Math.min(at, all.length - 1)]?.focus();
}

function key(event) {
    const find = document.getElementById("find"), at = document.activeElement;
    if (!find || event.ctrlKey || event.altKey || event.metaKey) return;
    const typing = at.matches("input, textarea, select"), here = at === find || links().includes(at);
    if (event.key === "/" && !typing) find.focus();
    else if (event.key === "ArrowDown" && (here || !typing)) step(at, 1);
    else if (event.key === "ArrowUp" && here && at !== find) step(at, -1);
    else if (act(at, event.key)) act(at, event.key).click();
    else return;
    event.preventDefault();
}

// One listener for the document, however often the page is opened.
document.addEventListener("keydown", key);

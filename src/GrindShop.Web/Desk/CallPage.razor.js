// A call by keyboard alone, and kept by this browser tab until it is taken in.
const key = "call-draft";
const places = { Digit1: "#line", Digit2: "#name", Digit3: "#notes", Digit4: ".them", Digit5: ".kind input:checked" };

function press(event) {
    const form = document.getElementById("call");
    if (!form) return;
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) form.requestSubmit();
    else if (event.altKey && !event.ctrlKey && places[event.code]) form.parentElement.querySelector(places[event.code])?.focus();
    else return;
    event.preventDefault();
}

// One listener for the document, however often the page is opened.
document.addEventListener("keydown", press);

export function start() {
    return JSON.parse(sessionStorage.getItem(key));
}

export function keep(draft) {
    sessionStorage.setItem(key, JSON.stringify(draft));
}

export function drop() {
    sessionStorage.removeItem(key);
}

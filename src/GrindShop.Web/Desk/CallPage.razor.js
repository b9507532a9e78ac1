// Forms of the desk by keyboard alone, and kept by this browser tab until they are taken in.
function press(event) {
    const form = document.querySelector("form.keyed");
    if (!form) return;
    const place = event.altKey && !event.ctrlKey && /^Digit\d$/.test(event.code) ? form.parentElement.querySelector(`[data-alt="${event.code.slice(5)}"]`) : null;
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) form.requestSubmit();
    else if (place) place.focus();
    else return;
    event.preventDefault();
}

// One listener for the document, however often such a page is opened.
document.addEventListener("keydown", press);

export function start(key) {
    return JSON.parse(sessionStorage.getItem(key));
}

export function keep(key, draft) {
    sessionStorage.setItem(key, JSON.stringify(draft));
}

export function drop(key) {
    sessionStorage.removeItem(key);
}

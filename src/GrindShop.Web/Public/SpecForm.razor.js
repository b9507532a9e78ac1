// What is typed is kept on this device at once, so that a lost connection, a reload or a closed browser loses nothing.
const place = "shop-draft";
let form = null;

function read() {
    try {
        return JSON.parse(localStorage.getItem(place)) ?? {};
    } catch {
        return {};
    }
}

function write(draft) {
    try {
        localStorage.setItem(place, JSON.stringify(draft));
    } catch {
        // A browser that keeps nothing: the shop still keeps the draft.
    }
}

function record(event) {
    const path = event.target.dataset?.path;
    if (!path)
        return;
    const draft = read();
    draft.typed = { ...draft.typed, [path]: event.target.value };
    write(draft);
    mark(draft.typed);
}

// Until the shop has answered, what is newest stands on this device only.
function mark(typed) {
    form?.toggleAttribute("data-unkept", Object.keys(typed).length > 0);
}

// Back on the line: the shop hears of everything that was typed in between.
function tellAgain() {
    for (const path of Object.keys(read().typed ?? {})) {
        const field = form?.querySelector(`[data-path="${CSS.escape(path)}"]`);
        field?.dispatchEvent(new Event(field.tagName === "SELECT" ? "change" : "input", { bubbles: true }));
    }
}

export function watch(element) {
    form = element;
    form.addEventListener("input", record, true);
    form.addEventListener("change", record, true);
    addEventListener("shop-connected", tellAgain);
    const draft = read();
    return { code: draft.code ?? null, typed: draft.typed ?? {} };
}

// The shop has these texts now: what is newer stays on the device.
export function kept(code, texts) {
    const draft = read();
    const typed = draft.code && draft.code !== code ? {} : draft.typed ?? {};
    for (const [path, text] of Object.entries(typed))
        if ((texts[path] ?? "") === text)
            delete typed[path];
    write({ code, typed });
    mark(typed);
}

export function forget() {
    localStorage.removeItem(place);
    mark({});
}

export function unwatch() {
    form?.removeEventListener("input", record, true);
    form?.removeEventListener("change", record, true);
    removeEventListener("shop-connected", tellAgain);
    form = null;
}

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

// Of a draft: its code with the shop, what came by a link until the shop keeps it, and what was typed and the shop has not heard of.
const inHand = ({ code, given, typed }) => ({ code: code ?? null, typed: { ...given, ...typed } });

// A draft that nobody has touched is not worth keeping.
const isTouched = ({ code, typed }) => Boolean(code) || Object.keys(typed ?? {}).length > 0;

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
    return { ...inHand(draft), earlier: draft.earlier ?? null };
}

// A cam that came by a link is a draft of its own: the one before is put aside and comes back when it is wanted.
export function begin(given) {
    const draft = read();
    const earlier = isTouched(draft) ? inHand(draft) : draft.earlier;
    write({ code: null, given, typed: {}, earlier });
    return earlier ?? null;
}

// The draft that was put aside is gone on with, and this one is put aside.
export function turnBack() {
    const draft = read();
    const earlier = isTouched(draft) ? inHand(draft) : null;
    write({ ...draft.earlier, earlier });
    mark(draft.earlier?.typed ?? {});
    return earlier;
}

// The shop has these texts now: what is newer stays on the device.
export function kept(code, texts) {
    const draft = read();
    const typed = draft.code && draft.code !== code ? {} : draft.typed ?? {};
    for (const [path, text] of Object.entries(typed))
        if ((texts[path] ?? "") === text)
            delete typed[path];
    write({ code, typed, earlier: draft.earlier });
    mark(typed);
}

// The form was filled by a click: what was typed before that counts no longer.
export function overrule() {
    write({ ...read(), given: {}, typed: {} });
    mark({});
}

// The draft has come to its end; one that was put aside stays.
export function forget() {
    const { earlier } = read();
    if (earlier)
        write({ earlier });
    else
        localStorage.removeItem(place);
    mark({});
}

export function unwatch() {
    form?.removeEventListener("input", record, true);
    form?.removeEventListener("change", record, true);
    removeEventListener("shop-connected", tellAgain);
    form = null;
}

// Light or dark: the person's own choice if there is one, the system's otherwise.
window.shop = {
    isDark() {
        document.documentElement.dataset.live = "yes"; // the page is connected and answers
        const chosen = localStorage.getItem("shop-dark");
        return chosen === null ? matchMedia("(prefers-color-scheme: dark)").matches : chosen === "1";
    },
    setDark(dark) {
        localStorage.setItem("shop-dark", dark ? "1" : "0");
    },
    print() {
        window.print();
    },
    // What became of an act is shown to whoever waits for it, not to whoever types in another field already.
    show(notice) {
        const now = document.activeElement;
        if (now === actedFrom || !now?.matches("input, select, textarea"))
            notice.focus();
    },
};

let actedFrom = null;
addEventListener("click", event => actedFrom = event.target.closest?.("button") ?? actedFrom, true);
addEventListener("submit", () => actedFrom = document.activeElement, true);

// A lost connection is said in a line at the bottom; the page stays usable, and forms keep what is typed on the device.
const offline = document.getElementById("components-reconnect-modal");

function sayOffline(state) {
    if (state)
        offline.dataset.state = state;
    else
        delete offline.dataset.state;
}

async function connectAgain() {
    sayOffline("trying");
    try {
        if (await Blazor.reconnect() || await Blazor.resumeCircuit?.())
            connected();
        else
            rejected();
    } catch {
        sayOffline("failed");
    }
}

function connected() {
    sayOffline(null);
    dispatchEvent(new Event("shop-connected"));
}

// A form that the device keeps comes back as it was; on any other page the person first sees what would be lost.
function rejected() {
    if (document.querySelector("form[data-kept]"))
        location.reload();
    else
        sayOffline("rejected");
}

offline?.addEventListener("components-reconnect-state-changed", event => {
    const state = event.detail.state;
    if (state === "show" || state === "retrying")
        sayOffline("trying");
    else if (state === "hide")
        connected();
    else if (state === "failed")
        sayOffline("failed");
    else if (state === "rejected" || state === "resume-failed")
        rejected();
});
document.getElementById("connect-again")?.addEventListener("click", connectAgain);
document.getElementById("load-again")?.addEventListener("click", () => location.reload());

// Copies the field beside the button, or selects it where the browser does not let a page copy.
document.addEventListener("click", async event => {
    const button = event.target.closest?.("[data-copies]");
    if (!button)
        return;
    const field = document.getElementById(button.dataset.copies);
    field.select();
    try {
        await navigator.clipboard.writeText(field.value);
        button.dataset.done = "yes";
    } catch {
        field.focus();
    }
});

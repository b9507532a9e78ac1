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
};

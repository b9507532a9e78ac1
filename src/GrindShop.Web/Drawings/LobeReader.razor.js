// The pointer over a lobe's drawing moves its slider to the angle it points at, counted from the finished nose.
export function follow(drawing, slider) {
    const svg = drawing.querySelector("svg");
    drawing.addEventListener("pointermove", event => {
        if (event.pointerType === "touch") return;
        const toPicture = svg.querySelector("g").getScreenCTM().inverse();
        const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(toPicture);
        const nose = Number(drawing.querySelector("[data-nose]").dataset.nose);
        const degrees = Math.atan2(at.x, -at.y) * 180 / Math.PI - nose;
        const wrapped = Math.round(((degrees + 540) % 360) - 180);
        if (Number(slider.value) === wrapped) return;
        slider.value = wrapped;
        slider.dispatchEvent(new Event("input", { bubbles: true }));
    });
}

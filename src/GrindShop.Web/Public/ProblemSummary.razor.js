export function focusField(id) {
    document.getElementById(id)?.focus();
}

/** Whether a key is pressed by itself, outside of what is typed into. */
export function isPressed(name: string, event: KeyboardEvent): boolean {
	const { key, target, ctrlKey, metaKey, altKey, defaultPrevented } = event;
	if (key !== name || ctrlKey || metaKey || altKey || defaultPrevented) return false;
	return !(target instanceof Element && target.closest('input, textarea, select'));
}

/** Takes what scrolls by itself into the order of Tab, as long as there is something to scroll. */
export function scrolls(box: HTMLElement): () => void {
	const look = () => {
		if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
		else box.removeAttribute('tabindex');
	};
	const observer = new ResizeObserver(look);
	observer.observe(box);
	return () => observer.disconnect();
}

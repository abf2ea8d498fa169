/** Below this height, in pixels, a phone's keyboard has covered the page. */
const covered = 500;

/** Wider pages have room beside the keyboard, or none at all. */
const widest = 600;

/**
 * What is left of a phone's page while its keyboard is up and an answer is being typed: its height
 * and where it begins, in pixels; null at all other times.
 */
export class Keyboard {
	left = $state.raw<{ readonly top: number; readonly height: number } | null>(null);
	/** Key of the answer that is typed in. */
	key = $state('');
	#typing = false;

	/** Listens as long as the sheet is there, and tells it in its style. Returns what ends it. */
	watch(sheet: HTMLElement): () => void {
		const { visualViewport: view } = window;
		if (!view) return () => {};
		const look = () => {
			const isUp = this.#typing && view.height < covered && view.width <= widest;
			this.left = isUp ? { top: view.offsetTop, height: view.height } : null;
			sheet.classList.toggle('keyed', isUp);
			if (!isUp) return;
			sheet.style.setProperty('--seen-top', `${view.offsetTop}px`);
			sheet.style.setProperty('--seen', `${view.height}px`);
		};
		const enter = ({ target }: Pick<Event, 'target'>) => {
			this.#typing ||= target instanceof HTMLInputElement && target.type === 'text';
			if (target instanceof HTMLElement && target.dataset.answer) this.key = target.dataset.answer;
			look();
		};
		const leave = ({ relatedTarget }: FocusEvent) => {
			// A press between two fields leaves the keyboard up.
			if (relatedTarget instanceof Node && !sheet.contains(relatedTarget)) this.#typing = false;
			// A field that is taken away is left in the middle of drawing the page.
			setTimeout(look);
		};
		const at = document.activeElement;
		if (sheet.contains(at)) enter({ target: at });
		sheet.addEventListener('focusin', enter);
		sheet.addEventListener('focusout', leave);
		view.addEventListener('resize', look);
		view.addEventListener('scroll', look);
		return () => {
			sheet.removeEventListener('focusin', enter);
			sheet.removeEventListener('focusout', leave);
			view.removeEventListener('resize', look);
			view.removeEventListener('scroll', look);
		};
	}
}

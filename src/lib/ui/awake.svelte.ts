/**
 * Whether the script of the page has come. Pages are drawn before: until then nothing would come of
 * a press or of what is typed, so the layout takes no press (`theme.css`), and what is filled in
 * waits with `inert={!awake.is}`.
 */
class Awake {
	is = $state(false);

	/** The script is here, and listens. */
	now(): void {
		this.is = true;
		delete document.documentElement.dataset.asleep;
	}
}

export const awake = new Awake();

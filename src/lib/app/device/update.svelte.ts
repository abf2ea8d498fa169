import { version } from '$app/environment';
import { keptAs } from './kept-as.ts';

/** Whether a newer version of the app than this page has taken over on the device. */
class Update {
	isThere = $state(false);

	/** Has the worker keep all that this page may fetch late, and listens for a newer version. */
	watch(): void {
		// Over plain http there are neither locks nor a worker.
		void navigator.locks?.request(keptAs(version), { mode: 'shared' }, untilThePageEnds);
		const workers = navigator.serviceWorker;
		if (!workers?.controller) return;
		workers.addEventListener('controllerchange', () => (this.isThere = true));
	}
}

const untilThePageEnds = () => new Promise<never>(() => {});

export const update = new Update();

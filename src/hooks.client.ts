import type { HandleClientError } from '@sveltejs/kit';
import { unexpected } from '$lib/app/unexpected.svelte.ts';

export const init = () => unexpected.listen(window);

export const handleError: HandleClientError = ({ error, status }) => ({
	message: status === 404 ? 'There is no page at this address.' : unexpected.sentence(error)
});

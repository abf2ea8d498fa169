/* What a page needs so that the words of its texts can be pressed: one file, loaded late. */
export { default as Worded } from './Worded.svelte';
export { default as WordPopup } from './WordPopup.svelte';

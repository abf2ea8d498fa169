// Somebody has worked here before: the first page then waits for the day's work, and does not show
// a newcomer's task first. It runs before the page is painted.
try {
	if (localStorage.getItem('bucktail.learner') !== null) {
		document.documentElement.dataset.known = '';
	}
} catch {
	// Storage may be refused: everybody is a newcomer then.
}

/** What stands at an address without a page: one sheet, framed as all pages are, and complete in itself. */
export const notFoundPage = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Page not found · Bucktail</title>
<style>
:root { color-scheme: light dark; --bench: #ebe9e0; --sheet: #fdfcf7; --ink: #1b2430; --line: #535d68; --primer: #4a6619; --on-primer: #fdfcf7; }
@media (prefers-color-scheme: dark) {
	:root { --bench: #11161b; --sheet: #192027; --ink: #e9ece4; --line: #a7b1b8; --primer: #b4cf77; --on-primer: #131a08; }
}
body { margin: 12px auto; max-width: 1280px; padding: 0 12px; background: var(--bench); color: var(--ink); font: 1rem/1.55 B612, system-ui, sans-serif; }
main { background: var(--sheet); padding: 7px; }
div { border: 1.5px solid var(--line); padding: 18px 24px 24px; }
h1 { margin: 0; font-size: 1.75rem; line-height: 1.22; }
p { margin: 0.75rem 0 1.25rem; }
a { display: inline-block; padding: 0.65rem 1.05rem; border-radius: 3px; background: var(--primer); color: var(--on-primer); font-weight: 700; text-decoration: none; }
a:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
</style>
<main><div>
<h1>This page cannot be shown</h1>
<p>There is no page at this address.</p>
<a href="/">Go to the first page</a>
</div></main>
</html>
`;

interface Key {
	readonly keys: string;
	readonly does: string;
}

/** Where keys do something of their own, and what. */
export const places: readonly { readonly where: string; readonly keys: readonly Key[] }[] = [
	{
		where: 'Everywhere',
		keys: [
			{ keys: 'Tab, Shift Tab', does: 'on to the next field or button, and back' },
			{ keys: 'Esc', does: 'closes what lies over the page' },
			{ keys: '?', does: 'shows this list' }
		]
	},
	{
		where: 'Tasks',
		keys: [{ keys: 'Enter', does: 'checks the answers; on Next task, goes on' }]
	},
	{
		where: 'Lessons and charts',
		keys: [{ keys: '← → ↑ ↓', does: 'change the value in hand; in a chart, move to the next cell' }]
	},
	{
		where: 'A set being made',
		keys: [
			{ keys: '↑ ↓', does: 'choose a task' },
			{ keys: 'Alt ↑ ↓', does: 'move it' },
			{ keys: 'N', does: 'draw other numbers' },
			{ keys: 'Delete', does: 'take it out' }
		]
	},
	{
		where: 'Hand-ins of a class',
		keys: [
			{ keys: '/', does: 'finds a student code' },
			{ keys: '← → ↑ ↓', does: 'move through the table' },
			{ keys: 'Enter', does: 'opens the entry; on a paper sheet, goes on to the next line' },
			{ keys: 'Shift Enter', does: 'on a paper sheet, goes back a line' },
			{ keys: 'M', does: 'changes the mark' }
		]
	},
	{
		where: 'Drawing of a panel',
		keys: [
			{ keys: '← → ↑ ↓', does: 'go from hole to hole' },
			{ keys: '+ −', does: 'enlarge, make smaller' },
			{ keys: '0', does: 'shows the whole panel' }
		]
	}
];

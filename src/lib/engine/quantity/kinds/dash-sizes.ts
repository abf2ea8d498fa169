import { type DashSize, dashText } from '../dash.ts';
import type { SizeNames } from './measured.ts';

/** The names of a rivet's lengths or diameters: `−5`, or a part number that holds them. */
export function dashSizes(size: DashSize): SizeNames {
	return {
		reading: (reader) => reader.dashNames(size),
		written(value, text) {
			const dash = dashText(value, size);
			return dash && `${text} (${dash})`;
		}
	};
}

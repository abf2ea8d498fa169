/** The files of a panel, with what stands on their buttons. */
export const panelFiles = {
	dxf: 'Save DXF',
	svg: 'SVG',
	holes: 'Holes, CSV',
	rivets: 'Rivets, CSV',
	drills: 'Drills, CSV',
	cut: 'Cut list, CSV',
	json: 'Panel file'
} as const;

export type PanelFile = keyof typeof panelFiles;

import type { Frame } from './view.ts';

/** A point of a drawing, in its units. */
export interface Place {
	readonly x: number;
	readonly y: number;
}

/** Where a pointer is on the screen. */
type OnScreen = Pick<PointerEvent, 'clientX' | 'clientY'>;

/** Most times enlarged. */
const mostZoom = 12;
/** A pointer that moved less has pressed, and not dragged. */
const pressed = 6;

/** The window on a drawing: enlarged by wheel, keys or two fingers, moved by one. */
export class Zoom {
	/** How many times enlarged. */
	times = $state(1);
	/** What is in the middle, as a share of the drawing. */
	#middle = $state.raw<Place>({ x: 0.5, y: 0.5 });
	readonly #frame: () => Frame;
	/** Fingers on the drawing, and how far they went; nothing is drawn by them. */
	// eslint-disable-next-line svelte/prefer-svelte-reactivity -- only read by the handlers
	readonly #touches = new Map<number, Place>();
	#moved = 0;

	readonly view = $derived.by(() => {
		const frame = this.#frame();
		const [wide, high] = [frame.width / this.times, frame.height / this.times];
		const held = (at: number, whole: number, part: number) =>
			Math.min(Math.max(at * whole - part / 2, 0), whole - part);
		const { x, y } = this.#middle;
		return { x: held(x, frame.width, wide), y: held(y, frame.height, high), wide, high };
	});

	constructor(frame: () => Frame) {
		this.#frame = frame;
	}

	/** A point of the screen on the drawing. */
	placeOf({ clientX, clientY }: OnScreen, node: Element): Place {
		const box = node.getBoundingClientRect();
		const { x, y, wide, high } = this.view;
		return {
			x: x + ((clientX - box.left) / box.width) * wide,
			y: y + ((clientY - box.top) / box.height) * high
		};
	}

	centre(place: Place): void {
		const { width, height } = this.#frame();
		this.#middle = { x: place.x / width, y: place.y / height };
	}

	/** @param at what stays where it is; left out, what is in the middle does */
	enlarge(by: number, at?: Place): void {
		const next = Math.min(Math.max(this.times * by, 1), mostZoom);
		if (at) {
			const { x, y, wide, high } = this.view;
			const k = this.times / next;
			this.centre({
				x: at.x + (x + wide / 2 - at.x) * k,
				y: at.y + (y + high / 2 - at.y) * k
			});
		}
		this.times = next;
	}

	whole(): void {
		this.times = 1;
	}

	down({ pointerId, clientX, clientY }: PointerEvent): void {
		this.#touches.set(pointerId, { x: clientX, y: clientY });
		if (this.#touches.size === 1) this.#moved = 0;
	}

	move(event: PointerEvent, node: Element): void {
		const before = this.#touches.get(event.pointerId);
		if (!before) return;
		const now = { x: event.clientX, y: event.clientY };
		this.#moved += Math.hypot(now.x - before.x, now.y - before.y);
		const other = [...this.#touches].find(([id]) => id !== event.pointerId)?.[1];
		this.#touches.set(event.pointerId, now);
		if (other) {
			const apart = (one: Place) => Math.hypot(one.x - other.x, one.y - other.y);
			const between = { clientX: (now.x + other.x) / 2, clientY: (now.y + other.y) / 2 };
			this.enlarge(apart(now) / Math.max(apart(before), 1), this.placeOf(between, node));
		} else if (this.times > 1 && this.#moved > 4) {
			const { x, y, wide, high } = this.view;
			const unit = wide / node.getBoundingClientRect().width;
			this.centre({
				x: x + wide / 2 - (now.x - before.x) * unit,
				y: y + high / 2 - (now.y - before.y) * unit
			});
		}
	}

	/** A finger is lifted; returns whether it only pressed. */
	up({ pointerId }: PointerEvent): boolean {
		return this.#touches.delete(pointerId) && this.#moved <= pressed;
	}

	leave({ pointerId }: PointerEvent): void {
		this.#touches.delete(pointerId);
	}
}

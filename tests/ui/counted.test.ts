import { expect, test } from 'vitest';
import { counted } from '../../src/lib/ui/counted.ts';

test('a count has its noun, and thousands apart', () => {
	expect(counted(1, 'task')).toBe('1 task');
	expect(counted(0, 'day')).toBe('0 days');
	expect(counted(1414, 'task')).toBe('1,414 tasks');
	expect(counted(1, 'question has', 'questions have')).toBe('1 question has');
	expect(counted(4, 'question has', 'questions have')).toBe('4 questions have');
});

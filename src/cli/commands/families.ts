import { loadFamilies } from '../../lib/engine/families/catalogue.ts';
import { topics } from '../../lib/engine/families/topics.ts';
import type { Answer } from '../run.ts';
import { columns } from './columns.ts';

export async function listFamilies(): Promise<Answer> {
	const families = await loadFamilies();
	const data = families.map(({ code, id, rev, topic, name, method }) => ({
		code,
		id,
		rev,
		topic,
		name,
		method: method.id,
		levels: [1, 2, 3]
	}));
	const rows = data.map((one) => [one.code, topics[one.topic], one.name, one.method]);
	return { data, text: columns([['Code', 'Topic', 'Task', 'Method'], ...rows]) };
}

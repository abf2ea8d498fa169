import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { XmlDocument, XsdValidator } from 'libxml2-wasm';

const [itemSchema, manifestSchema] = ['item.xsd', 'manifest.xsd'].map((name) => {
	const document = XmlDocument.fromString(readFileSync(join(import.meta.dirname, name), 'utf8'));
	return XsdValidator.fromDoc(document);
});

/** What is wrong with a file by its schema; null where nothing is. */
export function faultIn(name: string, text: string): string | null {
	const document = XmlDocument.fromString(text);
	try {
		const schema = name === 'imsmanifest.xml' ? manifestSchema : itemSchema;
		if (!name.endsWith('.svg')) schema?.validate(document);
		return null;
	} catch (error) {
		return `${name}: ${String(error)}`;
	} finally {
		document.dispose();
	}
}

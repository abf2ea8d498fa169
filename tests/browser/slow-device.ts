import type { Page } from 'playwright-core';

/** Slows the page's processor down four times, from here on. */
export async function slowProcessor(page: Page): Promise<void> {
	const session = await page.context().newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
}

/** Gives the page the network of a workshop: 9 Mbps down, 3 up, 100 ms. */
export async function slowNetwork(page: Page): Promise<void> {
	const session = await page.context().newCDPSession(page);
	await session.send('Network.enable');
	await session.send('Network.emulateNetworkConditions', {
		offline: false,
		latency: 100,
		downloadThroughput: 9e6 / 8,
		uploadThroughput: 3e6 / 8
	});
}

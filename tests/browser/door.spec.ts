import { expect, test } from './fixtures.ts';
import { startServer } from './server.ts';

test('the address opens the program once and leaves no key behind', async ({ openContext }) => {
  const server = await startServer('empty');
  try {
    // Without the cookie that the fixture gives to every other test.
    const context = await openContext();
    const page = await context.newPage();
    const refusals: string[] = [];
    page.on('console', (message) => {
      if (message.text().includes('Content Security Policy')) refusals.push(message.text());
    });
    await page.goto(server.address);
    expect(page.url()).toBe(`${server.origin}/`);
    await expect(page.getByRole('main')).toBeVisible();
    await page.reload();
    await expect(page.getByRole('main')).toBeVisible();
    await expect.poll(() => page.evaluate(() => document.cookie)).toBe('');
    expect(refusals).toEqual([]);

    const stranger = await openContext();
    const other = await stranger.newPage();
    const response = await other.goto(server.address);
    expect(response?.status()).toBe(401);
    await expect(other.getByText('npm start')).toBeVisible();
  } finally {
    await server.stop();
  }
});

test('a page of another origin can neither call nor show the program', async ({ page, server }) => {
  await page.route('http://shop.example/', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<title>Another site</title>' }),
  );
  await page.goto('http://shop.example/');
  const outcome = await page.evaluate(async (origin) => {
    try {
      const response = await fetch(`${origin}/rpc/office/about`, {
        method: 'POST',
        credentials: 'include',
        headers: { 'content-type': 'text/plain' },
        body: '{"json":{}}',
      });
      return `answered ${response.status}`;
    } catch {
      return 'refused';
    }
  }, server.origin);
  expect(outcome).toBe('refused');
});

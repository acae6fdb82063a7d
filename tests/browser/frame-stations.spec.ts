import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';

test('what another station writes shows by itself, and what is being typed stays', async ({
  page,
  desk,
  by,
}) => {
  const { code } = await takenIn(desk, by, unique('Station'));
  await openPage(page, `/job/${code}/till`);
  const line = page.getByRole('textbox', { name: 'Line 1, description' });
  await line.fill('Half a sen');
  const { id: jobId } = await desk.counter.job({ code });
  await desk.counter.moveJob({ by, jobId, to: 'diagnosis', note: 'On the other bench' });
  await expect(page.getByRole('region', { name: `Job ${code}` })).toContainText('Diagnosis');
  await expect(line).toHaveValue('Half a sen');
  await expect(line).toBeFocused();
});

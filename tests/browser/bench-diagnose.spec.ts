import { expect, takenIn, test } from './bench-shop.ts';
import { looksRight } from './faultless.ts';
import { inTheme } from './themes.ts';

test('what is wrong is found check by check, corrected, and put into the estimate', async ({
  page,
  desk,
  by,
}) => {
  const { code, jobId } = await takenIn(desk, by, 'Q160');
  await page.setViewportSize({ width: 900, height: 1200 });
  await page.goto(`/job/${code}`);
  await page.getByRole('link', { name: 'Diagnose' }).click();
  await page.getByRole('button', { name: /^Spark/ }).click();
  await page.getByRole('button', { name: 'Note it' }).click();
  await expect(page.getByText('Say whether it is sound or wants work.')).toBeVisible();
  await page.getByRole('radio', { name: 'Sound' }).click();
  await page.getByRole('button', { name: 'Note it' }).click();

  // It goes on at the next check that nobody looked at.
  await expect(page.getByRole('heading', { name: 'Fuel' })).toBeFocused();
  await page.getByRole('button', { name: /^Leak-down/ }).click();
  await page.getByRole('radio', { name: 'Wants work' }).click();
  await page.getByRole('textbox', { name: 'Leak' }).fill('140');
  await page.getByRole('combobox', { name: 'Air leaves by' }).click();
  await page.getByRole('option', { name: /the rings/ }).click();
  await page.getByRole('textbox', { name: 'Line 1 for the estimate' }).fill('Strip and measure');
  await page.getByRole('button', { name: 'Note it' }).click();
  await expect(page.getByText('A leak is 0 to 100 per cent.')).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: /^Leak-down/ }).click();
  await expect(page.getByRole('textbox', { name: 'Line 1 for the estimate' })).toHaveValue(
    'Strip and measure',
  );
  await page.getByRole('textbox', { name: 'Leak' }).fill('14');
  await expect(page.getByText(/it passes the rings/)).toBeVisible();
  for (const scheme of ['dark', 'light'] as const) {
    await inTheme(page, scheme);
    await looksRight(page);
  }
  await page.getByRole('button', { name: 'Note it' }).click();

  await page.getByRole('button', { name: /^Leak-down/ }).click();
  await page.getByRole('button', { name: 'Correct it' }).click();
  await page.getByRole('textbox', { name: 'Leak' }).fill('41');
  await page.getByRole('button', { name: 'Note the correction' }).click();
  const noted = async () => {
    const { findings, superseded } = await desk.bench.diagnosis({ jobId });
    return {
      found: findings.map(({ check, found, figures }) => [check, found, figures[0]?.text]),
      before: superseded.map(({ figures }) => figures[0]?.text),
    };
  };
  await expect.poll(noted).toEqual({
    found: [
      ['spark', 'sound', undefined],
      ['leak-down', 'wants-work', '41'],
    ],
    before: ['14'],
  });

  await page.getByRole('button', { name: 'Put 1 line into the estimate' }).click();
  await expect(page.getByRole('heading', { name: 'Till', exact: true })).toBeVisible();
  await expect(page.getByRole('textbox', { name: /description/i }).first()).toHaveValue(
    'Strip and measure',
  );
});

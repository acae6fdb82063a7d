import { looksRight, noFaults } from './faultless.ts';
import { expect, openPage, takenIn, test, unique } from './frame-shop.ts';
import { recordTypedName } from './typed-signature.ts';

test('another day is promised, and the day asks for the customer until they were told', async ({
  page,
  desk,
  by,
}) => {
  const name = unique('Ines Vale');
  const { code } = await takenIn(desk, by, name);
  await openPage(page, `/job/${code}`);
  await page.getByRole('button', { name: 'Promise a day' }).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('textbox', { name: 'Promised for' })).toBeFocused();
  await page.keyboard.type('+9');
  await page.keyboard.press('Tab');
  await page.keyboard.type('The rings were sent back');
  await dialog.getByRole('radio', { name: 'Not yet' }).check();
  await noFaults(page);
  await dialog.getByRole('button', { name: 'Promise this day' }).press('Enter');
  await expect(dialog.getByRole('button', { name: /^Tag T-\d+-2$/ })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('list', { name: 'How the promise was moved' })).toContainText(
    'The rings were sent back',
  );

  await openPage(page, '/');
  await page
    .getByRole('region', { name: 'Customers to tell' })
    .getByRole('link', { name })
    .press('Enter');
  await page.getByRole('button', { name: `${name} was told` }).press('Enter');
  await page.getByRole('menuitem', { name: 'By telephone' }).press('Enter');
  await expect(page.getByText(/Told by telephone by/)).toBeVisible();
  await looksRight(page);
  await openPage(page, '/');
  await expect(page.getByRole('link', { name }).first()).toBeVisible();
  await expect(page.getByRole('region', { name: 'Customers to tell' })).toBeHidden();
});

test('intake and plates are mended, a machine that is here is asked about, and who left is gone', async ({
  page,
  desk,
  by,
}) => {
  const { code } = await takenIn(desk, by, unique('Otto Lind'));
  await openPage(page, `/job/${code}`);
  await page
    .getByRole('region', { name: 'What came in' })
    .getByRole('button', { name: 'Mend' })
    .click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('combobox', { name: 'Left with it' }).fill('key, bag');
  await dialog.getByRole('textbox', { name: 'Why it is mended' }).fill('The bag was in the car');
  await noFaults(page);
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog.getByRole('button', { name: /^Claim ticket C-\d+-2$/ })).toBeVisible();
  await expect(dialog.getByRole('button', { name: /^Tag T-\d+-2$/ })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByText('key · bag')).toBeVisible();

  const serial = unique('MENDED');
  await page.getByRole('button', { name: 'Mend what stands on the plates' }).click();
  const field = dialog.getByRole('textbox', { name: 'Serial number' });
  await expect(field).toBeFocused();
  await field.fill(serial);
  await page.keyboard.press('Enter');
  await expect(dialog.getByRole('button', { name: /^Tag T-\d+-3$/ })).toBeVisible();
  await page.keyboard.press('Enter');

  await openPage(page, '/take-in');
  await page.getByRole('combobox', { name: 'Serial number' }).fill(serial);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: `Open ${code}` })).toBeVisible();
  await page.getByRole('textbox', { name: 'Complaint' }).fill('Rattles');
  await recordTypedName(page);
  await page.getByRole('button', { name: 'Take in', exact: true }).click();
  await expect(page.getByText(/^Go on with the open job, or say/)).toBeVisible();
  await page.getByRole('checkbox', { name: 'Take it in again, on another job' }).check();
  await page.getByRole('button', { name: 'Take in', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Taken in' })).toBeVisible();

  const ben = await desk.office.addStaff({ by, name: unique('Ben Ray'), role: 'bench' });
  await page.addInitScript((id) => window.localStorage.setItem('tappet.station', id), ben.id);
  await openPage(page, '/office/staff');
  await page.getByRole('textbox', { name: 'Name' }).fill(unique('Cleo'));
  await desk.office.amendStaff({ ...ben, by, active: false });
  await page.getByRole('button', { name: 'Add to the list' }).click();
  await expect(page.getByRole('heading', { name: 'Who is at this station?' })).toBeVisible();
});

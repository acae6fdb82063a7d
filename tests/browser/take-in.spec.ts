import { deskAt, ownerOf } from './desk-client.ts';
import { noFaultsInEitherTheme } from './faultless.ts';
import { expect, test } from './fixtures.ts';
import { Hands } from './hands.ts';
import { textOf } from './text-of.ts';
import { toldNow } from './told-time.ts';
import { recordTypedName } from './typed-signature.ts';

/** The measure of an intake: key presses and fields beyond the text itself. */
const MOST = 45;

const prepared = test.extend<{ desk: ReturnType<typeof deskAt> }>({
  desk: [
    async ({ server, session, page }, use) => {
      const desk = deskAt(server.origin, session);
      const owner = await ownerOf(desk);
      // Other tests of the worker may have put a second person on the staff list.
      await page.addInitScript((id) => window.localStorage.setItem('tappet.station', id), owner.id);
      await use(desk);
    },
    { auto: true },
  ],
});

/** Serial numbers differ from test to test: tests of one worker share a shop. */
let made = 0;
const serial = () => `TL-${toldNow().getTime()}-${++made}`;

prepared('a new customer with a new machine, by the keyboard alone', async ({ page, desk }) => {
  await desk.specbook
    .addModel({
      by: (await ownerOf(desk)).id,
      make: 'Harrowgate',
      model: 'HG 200',
      cycle: 'four-stroke',
      cylinders: 1,
      bore: 68,
      stroke: 54,
    })
    // Another test of this worker may have added it.
    .catch(() => undefined);
  const number = serial();
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();

  const hands = new Hands(page);
  await hands.press('F2');
  await hands.fill('Name', 'Łucja Żółkiewska');
  await hands.press('Tab');
  await hands.fill('Telephone and e-mail', '312 555 0199 lucja@example.org');
  await hands.press('Enter');
  await hands.fill('Serial number', number);
  await hands.press('Tab');
  await hands.fill('Kind', 'ti');
  await hands.press('Enter');
  await hands.fill('Make and model of the machine', 'Old Mill, T-50');
  await hands.press('Tab');
  await hands.fill('Make and model of the engine', 'harrowgate hg200');
  await hands.press('Enter');
  await hands.fill('Type code', 'B2');
  await hands.press('Tab');
  await hands.fill('Engine serial', '0042');
  await hands.press('Tab');
  await hands.fill('Complaint, in the customer’s words', 'Stopped on the field, won’t start.');
  await hands.press('Tab');
  await hands.fill('Symptoms', 'won, smokes, paint peels');
  await hands.press('Tab');
  await hands.fill('Condition and missing parts', 'Muffler rusty.');
  await hands.press('Tab');
  await hands.fill('Left with it', 'key, bag');
  await hands.press('Enter');
  await hands.fill('Fuel and its age', 'half, last autumn');
  await hands.press('Tab');
  await hands.fill('Last service', 'spring 2024');
  await hands.press('Tab');
  await hands.fill('Diagnosis fee', '45');
  await hands.press('Tab');
  await hands.fill('Spending limit', '300');
  await hands.press('Tab');
  await hands.fill('Deposit', '50');
  await hands.press('Tab');
  await hands.fill('Promised for', '+5');
  await hands.press('Tab');
  await hands.choose('Telephone', 'ArrowRight');
  await hands.press('Tab');
  // However often it is pressed, Enter signs nothing: that takes another act.
  await hands.choose('Name of who signs', 'Enter');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Name of who signs' })).toHaveValue(
    'Łucja Żółkiewska',
  );
  const by = (await ownerOf(desk)).name;
  await expect(page.getByText(`Typed by ${by} for Łucja Żółkiewska. Not signed yet`)).toBeVisible();
  await hands.press('Tab');
  await hands.sees('Record typed signature');
  await hands.press('Enter');
  await expect(page.getByText(`Signed: typed name, entered by ${by}.`)).toBeFocused();
  await hands.press('Control+Enter');

  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Taken in');
  const code = await textOf(page.getByText(/^J\d{6}$/), /^J\d{6}$/);
  await hands.sees('Print claim ticket');
  console.log(
    `Intake: ${hands.presses} key presses + ${hands.fields} fields = ${hands.cost} beyond the text`,
  );
  expect(hands.cost).toBeLessThanOrEqual(MOST);

  const job = await desk.counter.job({ code });
  expect(job).toMatchObject({
    intakeSigned: { name: 'Łucja Żółkiewska', typedBy: by },
    customer: {
      name: 'Łucja Żółkiewska',
      phone: '312 555 0199',
      email: 'lucja@example.org',
    },
    machineDetails: {
      kind: 'tiller',
      make: 'Old Mill',
      model: 'T-50',
      serial: number,
      engine: {
        make: 'Harrowgate',
        model: 'HG 200',
        typeCode: 'B2',
        serial: '0042',
        engineModelName: 'Harrowgate HG 200',
      },
    },
    complaint: 'Stopped on the field, won’t start.',
    symptoms: ['will-not-start', 'smokes'],
    condition: 'Muffler rusty.\nAlso seen: paint peels.',
    leftWith: ['key', 'bag'],
    fuel: 'half, last autumn',
    lastService: 'spring 2024',
    reachBy: 'text',
    diagnosisFee: 4500,
    spendingLimit: 30_000,
    depositAgreed: 5000,
  });
  const taken = Date.parse(job.takenInOn);
  expect(Date.parse(job.promisedFor ?? '')).toBe(taken + 5 * 86_400_000);
  expect(job.papers.map(({ kind }) => kind).sort()).toEqual(['claim-ticket', 'tag']);
});

prepared('a known customer and a known serial number fill in the rest', async ({ page, desk }) => {
  const by = (await ownerOf(desk)).id;
  const customer = await desk.counter.addCustomer({
    by,
    name: '山田 太郎',
    phone: '312 555 0142',
  });
  const number = serial();
  await desk.counter.addMachine({
    by,
    customerId: customer.id,
    kind: 'mower',
    make: 'Fernhill',
    model: 'M-42',
    serial: number,
    engine: { make: 'Harrowgate', model: 'HG 200' },
  });

  await page.goto('/take-in');
  const hands = new Hands(page);
  await hands.fill('Name', '山田');
  await expect(page.getByRole('option', { name: '山田 太郎' })).toBeVisible();
  await hands.press('ArrowDown');
  await hands.press('Enter');
  await expect(page.getByRole('button', { name: 'Change the customer' })).toBeVisible();
  // A barcode reader types the number without its dashes and sends Enter at once.
  await hands.fill('Serial number', number.replaceAll('-', ''));
  await hands.press('Enter');
  await expect(page.getByText('Mower Fernhill M-42')).toBeVisible();
  await hands.fill('Complaint, in the customer’s words', '刃が回らない');
  await recordTypedName(page);
  await hands.press('Control+Enter');
  const code = await textOf(page.getByText(/^J\d{6}$/), /^J\d{6}$/);
  await expect
    .poll(() => desk.counter.job({ code }))
    .toMatchObject({
      customerId: customer.id,
      complaint: '刃が回らない',
      machineDetails: { serial: number },
    });
});

prepared('what is refused is said at its field, and nothing typed is lost', async ({ page }) => {
  await page.goto('/take-in');
  const hands = new Hands(page);
  await hands.sees('Name');
  await hands.press('Control+Enter');
  await hands.sees('Name');
  await expect(page.getByText('Type the customer’s name.')).toBeVisible();
  await expect(page.getByText('Let the customer sign, or record a typed signature.')).toBeVisible();

  await hands.fill('Name', 'Ελένη Παππά');
  await hands.press('Tab');
  await hands.fill('Telephone and e-mail', 'eleni@nowhere');
  const kind = page.getByRole('combobox', { name: 'Kind' });
  await kind.focus();
  await page.keyboard.type('zeppelin');
  await page.keyboard.press('Enter');
  await expect(page.getByText('“zeppelin” is no kind on the list.')).toBeVisible();
  await expect(kind).toBeFocused();
  await kind.fill('');
  await hands.fill('Kind', 'gen');
  await page.getByRole('textbox', { name: 'Complaint' }).focus();
  await hands.fill('Complaint, in the customer’s words', 'No output.');
  await recordTypedName(page);
  await hands.press('Control+Enter');
  const contact = page.getByRole('textbox', { name: 'Telephone and e-mail' });
  await expect(contact).toBeFocused();
  await expect(contact).toHaveAttribute('aria-invalid', 'true');
  await expect(contact).toHaveAccessibleDescription(/That is not an e-mail address/);

  await page.reload();
  await expect(page.getByRole('combobox', { name: 'Name' })).toHaveValue('Ελένη Παππά');
  await expect(page.getByRole('combobox', { name: 'Kind' })).toHaveValue('Generator');
  await expect(contact).toHaveValue('eleni@nowhere');
  await expect(page.getByText('licensed people only')).toBeVisible();

  await page.getByRole('button', { name: 'Clear all' }).click();
  await expect(contact).toHaveValue('');
  await page.getByRole('button', { name: 'Bring back what was cleared' }).click();
  await expect(contact).toHaveValue('eleni@nowhere');

  await contact.fill('eleni@example.org');
  await page.route('**/rpc/counter/takeIn', (route) => route.abort());
  await hands.press('Control+Enter');
  await expect(page.getByRole('alert')).toContainText('does not answer');
  await page.unroute('**/rpc/counter/takeIn');
  // The form has the focus again: the same keys try once more.
  await expect(page.locator('[data-take-in]')).toBeFocused();
  await hands.press('Control+Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Taken in');
  await page.getByRole('button', { name: 'Next customer' }).click();
  await expect(page.getByRole('combobox', { name: 'Name' })).toHaveValue('');
});

prepared('a serial number that is taken offers its machine', async ({ page, desk }) => {
  const by = (await ownerOf(desk)).id;
  const owner = await desk.counter.addCustomer({ by, name: 'Liv Ødegård' });
  const number = serial();
  await desk.counter.addMachine({
    by,
    customerId: owner.id,
    kind: 'pump',
    make: 'Brackwater',
    model: 'P-2',
    serial: number,
    engine: {},
  });
  await page.goto('/take-in');
  await page.getByRole('combobox', { name: 'Name' }).fill('Liv');
  await page.getByRole('combobox', { name: 'Kind' }).fill('pump');
  await page.getByRole('combobox', { name: 'of the machine' }).fill('Brackwater P-2');
  // Entered last: the page leaves alone what somebody has begun to describe.
  await page.getByRole('combobox', { name: 'Serial number' }).fill(number);
  await page.getByRole('textbox', { name: 'Complaint' }).fill('Sucks no water.');
  await recordTypedName(page);
  await page.keyboard.press('Control+Enter');
  await page.getByRole('button', { name: 'Use the machine of Liv Ødegård' }).click();
  await page.getByRole('button', { name: 'Liv Ødegård brings it' }).click();
  await expect(page.getByRole('button', { name: 'Change the customer' })).toBeVisible();
  await expect(page.getByText('What was signed for has changed since')).toBeVisible();
  await recordTypedName(page);
  await page.keyboard.press('Control+Enter');
  const code = await textOf(page.getByText(/^J\d{6}$/), /^J\d{6}$/);
  await expect.poll(async () => (await desk.counter.job({ code })).customerId).toBe(owner.id);
});

prepared('a telephone number that is known asks, and stops nobody', async ({ page, desk }) => {
  const by = (await ownerOf(desk)).id;
  const known = await desk.counter.addCustomer({ by, name: 'Bram Okafor', phone: '312-555-0188' });
  await page.goto('/take-in');
  const hands = new Hands(page);
  await hands.fill('Name', 'B. Okafor');
  await hands.press('Tab');
  await hands.fill('Telephone and e-mail', '(312) 555 0188');
  await expect(page.getByText('Known customer? Bram Okafor')).toBeVisible();
  await hands.press('Enter');
  await hands.sees('Serial number');
  await hands.press('Alt+k');
  await expect(page.getByText(`Customer ${known.number}`)).toBeVisible();
});

prepared('the intake reads well', async ({ page }) => {
  await page.goto('/take-in');
  const complaint = page.getByRole('textbox', { name: 'Complaint' });
  await complaint.fill('המנוע לא מתניע.');
  await expect(complaint).toHaveCSS('direction', 'rtl');
  await complaint.fill('Hunts.');
  await expect(complaint).toHaveCSS('direction', 'ltr');
  await page.getByRole('combobox', { name: 'Symptoms' }).fill('hunts, odd noise');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByText('Type the customer’s name.')).toBeVisible();
  await noFaultsInEitherTheme(page);
});

prepared('a double click takes one machine in, not two', async ({ page, desk }) => {
  await page.goto('/take-in');
  const hands = new Hands(page);
  const before = (await desk.counter.jobs({})).length;
  await hands.fill('Name', 'Harriet Bowdoin');
  await page.getByRole('combobox', { name: 'Kind' }).fill('pump');
  await page.keyboard.press('Enter');
  await page.getByLabel('Complaint, in the customer’s words').fill('Draws no water.');
  await page.getByLabel('Name of who signs').fill('Harriet Bowdoin');
  await page.getByRole('button', { name: 'Record typed signature' }).click();
  await page.locator('[data-take-in]').dblclick();
  await expect(page.getByRole('button', { name: 'Print claim ticket' })).toBeVisible();
  await expect.poll(async () => (await desk.counter.jobs({})).length).toBe(before + 1);
});

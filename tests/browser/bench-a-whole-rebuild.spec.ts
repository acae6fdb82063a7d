import { readFile } from 'node:fs/promises';
import { readPaper, rowsWith } from '../unit/paper/reading-back.ts';
import { Thumb } from './bench-by-touch.ts';
import { expect, test } from './fixtures.ts';

/**
 * A whole rebuild of the invented shop's worn twin, from strip-down to its clearance sheet, by touch alone
 * on a tablet. Only the screens change anything; the job, the engine and every size are invented.
 */

test.use({ shop: 'demo', viewport: { width: 900, height: 1200 }, hasTouch: true });

const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

const CODE = 'J000027';
const FEELER = /^Feeler set F1/;
const WRENCH = /^Torque wrench T1/;
const BORE_GAUGE = /^Bore gauge B2/;

test('the worn twin is measured, decided on, built, run, and has its clearance sheet', async ({
  page,
}) => {
  test.setTimeout(300_000);
  const hand = new Thumb(page);

  await test.step('to the bench', async () => {
    await page.goto('/');
    await page.getByRole('button', { name: /^Ignacio Peña/ }).tap();
    await page.getByRole('link', { name: new RegExp(CODE) }).tap();
    await page.getByRole('link', { name: 'Measure and pass hold points' }).tap();
    await expect(page.getByRole('heading', { level: 2, name: 'Cylinder bore' })).toBeVisible();
  });

  await test.step('as received: cylinder 2 is worn past its limit', async () => {
    await hand.readPlaces('Cylinder bore', BORE_GAUGE, [
      ...['81.038', '81.044', '81.033', '81.036', '81.026', '81.028'],
      ...['81.108', '81.131', '81.088', '81.104', '81.050', '81.058'],
    ]);
    await expect(hand.featureInList('Cylinder bore')).toContainText('outside');
  });

  await test.step('a crankpin too close to call, settled by the gauge that the screen asks for', async () => {
    await hand.measure('Crankpin', /^Micrometer M2/, ['33.928', '33.926', '33.911', '33.902']);
    const places = page.getByRole('list', { name: 'Places' });
    await expect(hand.featureInList('Crankpin')).toContainText('1 too close to call');
    await expect(places).toContainText('To settle it: a gauge that is good to ±0.002 mm or better');
    await places.getByRole('button', { name: /^cylinder 2, a quarter turn on/i }).tap();
    await hand.takeGauge(/^Indicating micrometer M5/);
    await hand.record('33.9022');
    await expect(hand.featureInList('Crankpin')).toContainText('4 of 4, all within');
    await expect(places).toContainText('Settled by the reading above.');
  });

  await test.step('a gauge that is out of date says so', async () => {
    await hand.measure('Connecting rod big end', /^Bore gauge B1/, ['34.021', '34.044']);
    await hand.featureInList('Crankshaft end play').tap();
    await hand.takeGauge(/^Dial indicator D1 \(calibration expired\)/);
    await expect(page.getByText(/^Calibration expired on /)).toBeVisible();
    await hand.readPlaces('Crankshaft end play', null, ['0.62']);
    await expect(page.getByRole('list', { name: 'Places' })).toContainText('calibration was due');
  });

  await test.step('the compression ratio follows from the volumes', async () => {
    await hand.measure('Deck clearance', /^Depth micrometer/, ['0.41', '0.39']);
    await hand.measure('Head gasket thickness', /^Micrometer M1/, ['1.20', '1.21']);
    await hand.measure('Combustion chamber volume', /^Burette/, ['39.8', '40.2']);
    const follows = page.getByRole('region', { name: 'What follows from these readings' });
    await expect(
      follows.getByRole('row', { name: /^Compression ratio.*cylinder 2/ }),
    ).toContainText('8.03');
  });

  await test.step('decided: cylinder 2 goes to the oversize that is on the shelf', async () => {
    await page.getByRole('link', { name: 'Decide' }).tap();
    const bore = page.getByRole('region', { name: 'Cylinder bore, cylinder 2', exact: true });
    await expect(bore).toContainText('Advice: next oversize +0.25');
    await bore.getByRole('radio', { name: /^Next oversize/ }).tap();
    await expect(bore.getByRole('radio', { name: /^\+0\.25/ })).toContainText(
      'VK-680-16: 2 on the shelf',
    );
    await bore.getByRole('button', { name: 'Decide: next oversize +0.25 mm' }).tap();
    await expect(bore).toContainText('Next oversize +0.25 mm, to 81.25–81.27 mm');
    await hand.decide('Piston, cylinder 2', /^Oversize piston/);
    await hand.decide('Piston rings, cylinder 2', /^Oversize rings/);
    await hand.decide('Cylinder bore, cylinder 1', /^Hone/);
    await hand.decide('Piston rings, cylinder 1', /^New rings/);
    await hand.decide('Connecting rod, cylinder 2', /^Replace/);
    await hand.decide('Crankshaft', /^Reuse/);
    const follows = page.getByRole('region', { name: 'What follows for the estimate' });
    await follows.getByRole('button', { name: /^Put \d+ lines into the estimate/ }).tap();
    await expect(page).toHaveURL(new RegExp(`/job/${CODE}/till$`));
    const lines = page.getByRole('textbox', { name: /^Line \d+, description$/ });
    await expect(lines.first()).toBeVisible();
    const draft = await lines.evaluateAll((fields) =>
      fields.map((field) => (field instanceof HTMLTextAreaElement ? field.value : '')),
    );
    expect(draft).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^Bore and hone cylinder 2 \+0\.25.mm, to 81\.25–81\.27.mm$/),
        'Piston, 0.25 oversize, D-680',
        'Ring set, 0.25 oversize, D-680',
        'Ring set, standard, D-680',
      ]),
    );
  });

  await test.step('the finished bores are held against the sizes that were decided', async () => {
    await page.getByRole('link', { name: 'Bench', exact: true }).tap();
    await page.getByText('Final', { exact: true }).tap();
    await hand.featureInList('Cylinder bore').tap();
    await expect(page.getByText('Decided, cylinder 2: +0.25 mm.')).toBeVisible();
    await hand.readPlaces('Cylinder bore', null, [
      ...['81.046', '81.048', '81.040', '81.042', '81.036', '81.038'],
      ...['81.258', '81.260', '81.257', '81.259', '81.256', '81.258'],
    ]);
    await expect(hand.featureInList('Cylinder bore')).toContainText('12 of 12, all within');
    await hand.measure('Piston skirt', /^Micrometer M4/, ['80.915', '81.203']);
    await expect(hand.featureInList('Piston skirt')).toContainText('2 of 2, all within');
  });

  await test.step('built: pistons, rings, rods, marks and gaskets', async () => {
    await page.getByRole('link', { name: 'Build' }).tap();
    await hand.seesStep(/^Piston the right way/);
    await hand.tapInStep('It lies this way');
    await hand.seesStep(/^Ring gaps/);
    await hand.measureForStep('Ring end gap', FEELER, ['0.32', '0.33', '0.30', '0.31']);
    await hand.tapInStep(/^Measured and set/);
    await hand.seesStep(/^Rod cap/);
    await hand.measureForStep('Crankpin', null, ['33.928', '33.926', '33.911', '33.9022']);
    await hand.seesStep(/^Rod cap/);
    await hand.measureForStep('Connecting rod big end', null, ['34.021', '34.008']);
    await hand.tapInStep('It lies this way');
    await hand.seesStep(/^Final readings/);
    await hand.tapInStep(/^Measured and set/);
    await hand.seesStep(/^Rod bolts/);
    await hand.measureForStep('Connecting rod bolts', WRENCH, ['15', '15']);
    await hand.tapInStep(/^Tightened/);
    await hand.seesStep(/^Timing marks/);
    await hand.tapInStep('It lies this way');
    await hand.seesStep(/^Governor gear/);
    await hand.tapInStep('Seen and done');
    await hand.seesStep(/^Crankcase shut/);
    await hand.tapInStep('Seen and done');
    await hand.seesStep(/^Crankshaft end play/);
    await hand.measureForStep('Crankshaft end play', null, ['0.30']);
    await hand.tapInStep(/^Measured and set/);
    await hand.seesStep(/^Head gasket/);
    await hand.tapInStep('It lies this way');
  });

  await test.step('head bolts: the telephone rings in the middle of stage 2', async () => {
    await hand.seesStep(/^Head bolts/);
    await hand.step.getByRole('combobox', { name: 'Wrench' }).tap();
    await page.getByRole('option', { name: /^Torque wrench T1/ }).tap();
    await hand.pullBolts([1, 2, 3, 4, 5, 1, 2]);
    await expect(hand.step).toContainText('Stage 2 of 3');
    await page.getByRole('link', { name: 'The day' }).tap();
    await page.getByRole('link', { name: new RegExp(CODE) }).tap();
    await page.getByRole('link', { name: 'Bench', exact: true }).tap();
    await page.getByRole('link', { name: 'Build' }).tap();
    await expect(hand.step.getByRole('button', { name: 'Bolt 3 pulled' })).toBeVisible();
    await expect(hand.step).toContainText('Set the wrench to19.6 N·m');
    await hand.pullBolts([3, 4, 5, 1, 2, 3, 4, 5]);
    await expect(hand.step.getByText('Every bolt was pulled to every stage.')).toBeVisible();
    // The other head's bolts are loose: that is no tightened engine.
    await expect(hand.step.getByRole('button', { name: /^Tightened/ })).toBeDisabled();
    await hand.step.getByText('Cylinder 2', { exact: true }).tap();
    await hand.pullBolts([1, 2, 3, 4, 5, 1, 2, 3, 4, 5, 1, 2, 3, 4, 5]);
    await expect(hand.step.getByText('Every bolt was pulled to every stage.')).toBeVisible();
    await hand.tapInStep(/^Tightened/);
  });

  await test.step('valve train, and valve lash with where the engine stands', async () => {
    await hand.seesStep(/^Push rods/);
    await hand.tapInStep('Seen and done');
    await hand.seesStep(/^Valve lash/);
    for (const [label, text] of [
      ['Valve lash, intake', '0.10'],
      ['Valve lash, exhaust', '0.13'],
    ] as const) {
      await hand.step.getByRole('button', { name: `Measure ${label.toLowerCase()}` }).tap();
      for (const cylinder of [1, 2]) {
        const question = page.getByRole('group', {
          name: `Where does cylinder ${cylinder} stand?`,
        });
        await expect(hand.field).toBeHidden();
        await question.getByRole('button', { name: /just past top dead centre/ }).tap();
        if (cylinder === 1) await hand.takeGauge(FEELER);
        await hand.record(text);
      }
      await page.getByRole('link', { name: 'Back to the build' }).tap();
    }
    await hand.tapInStep(/^Measured and set/);
  });

  const reason = 'Flywheel stayed on: key and taper seen in spring';
  await test.step('a hold point is overridden, with its reason', async () => {
    await hand.seesStep(/^Flywheel key/);
    await hand.tapInStep(/^Override/);
    const dialog = page.getByRole('dialog', { name: 'Override a step of the build' });
    await hand.type(dialog.getByRole('textbox', { name: 'Why this may go on without it' }), reason);
    await dialog.getByRole('button', { name: 'Override in my name' }).tap();
  });

  await test.step('flywheel nut, air gap, and what is put back outside', async () => {
    await hand.seesStep(/^Flywheel nut/);
    await hand.measureForStep('Flywheel nut', WRENCH, ['56']);
    await hand.tapInStep(/^Tightened/);
    await hand.seesStep(/^Coil air gap/);
    await hand.measureForStep('Coil air gap', FEELER, ['0.28', '0.29']);
    await hand.tapInStep(/^Measured and set/);
    for (const step of [/^Turned by hand/, /^Each cylinder/]) {
      await hand.seesStep(step);
      await hand.tapInStep('Seen and done');
    }
    await hand.seesStep(/^Wiring/);
    await hand.tapInStep('Joined as in the diagram');
    for (const step of [
      /^Governor set/,
      /^Crankcase breather/,
      /^Starter/,
      /^Tank/,
      /^Air filter/,
    ]) {
      await hand.seesStep(step);
      await hand.tapInStep('Seen and done');
    }
  });

  await test.step('plug, oil, and a photo of the engine as built', async () => {
    await hand.seesStep(/^Plug gap/);
    await hand.measureForStep('Spark plug gap', /^Plug wire/, ['0.75', '0.75']);
    await hand.tapInStep(/^Measured and set/);
    await hand.seesStep(/^Oil filled/);
    await expect(hand.step).toContainText('The spec book: SAE 10W-30, 1900 ml.');
    await hand.type(hand.step.getByRole('textbox', { name: /^Grade/ }), 'SAE 10W-30');
    await hand.type(hand.step.getByRole('textbox', { name: /^How much/ }), '1900');
    await hand.tapInStep(/^Filled/);
    await hand.seesStep(/^Guards/);
    await hand.tapInStep('Seen and done');
    await hand.seesStep(/^Photo of the engine/);
    const chooser = page.waitForEvent('filechooser');
    await hand.tapInStep('Take a photo');
    await (await chooser).setFiles({ name: 'as-built.png', mimeType: 'image/png', buffer: PIXEL });
    await expect(hand.step.getByRole('img', { name: /^Taken by/ })).toBeVisible();
    await hand.tapInStep(/^Photo taken/);
  });

  await test.step('the test run is signed off', async () => {
    await hand.seesStep(/^Test run/);
    await page.getByRole('link', { name: 'Write the test run down' }).tap();
    for (const [what, outcome] of [
      ['Stop switch', 'Works'],
      ['Governor', 'Works'],
      ['Fuel system', 'Dry'],
    ] as const)
      await page.getByRole('radiogroup', { name: what }).getByText(outcome, { exact: true }).tap();
    for (const [label, text] of [
      ['Idle', '1560'],
      ['Top, no load', '3640'],
      ['Output, volts', '121'],
      ['Compression, cylinder 1', '760'],
      ['Compression, cylinder 2', '780'],
      ['Leak-down, cylinder 1', '7'],
      ['Leak-down, cylinder 2', '6'],
    ] as const)
      await hand.type(page.getByRole('textbox', { name: label }), text);
    await page.getByRole('button', { name: 'Passed: sign it off' }).tap();
    await expect(
      page.getByRole('region', { name: 'Runs so far' }).getByText('Passed', { exact: true }),
    ).toBeVisible();
    await page.getByRole('link', { name: 'Build' }).tap();
    await hand.seesStep(/^Test run/);
    await hand.step.getByRole('button').first().tap();
    await expect(page.getByText('Every step is done')).toBeVisible();
  });

  await test.step('its clearance sheet says all of it', async () => {
    await page.getByRole('link', { name: 'Measure', exact: true }).tap();
    await page.getByRole('button', { name: 'Clearance sheet…' }).tap();
    const dialog = page.getByRole('dialog', { name: 'Clearance sheet' });
    await dialog.getByRole('button', { name: 'Issue the sheet' }).tap();
    await dialog.getByRole('button', { name: /print or save$/ }).tap();
    const download = page.waitForEvent('download');
    await page.getByRole('menuitem', { name: 'Save the PDF' }).tap();
    const bytes = new Uint8Array(await readFile(await (await download).path()));
    const paper = await readPaper(bytes);
    const row = (figure: string) => rowsWith(paper, figure).join('\n');
    expect(row('81.131 mm')).toContain('outside limits');
    expect(row('33.902 mm')).toContain('too close to call');
    expect(row('33.9022 mm')).toContain('within limits');
    expect(row('81.260 mm')).toContain('within limits');
    expect(row('28 N·m')).toContain('cylinder 2, stage 3 of 3');
    for (const words of [
      'Varnock D-680',
      '81.25 to 81.27 mm',
      '+0.25 mm decided',
      'calibration was due',
      'compression stroke, just past top dead centre',
    ])
      expect(paper.text).toContain(words);
  });
});

import { shopOf } from '../../../db/queries/office.ts';
import { labelSettingsOf } from '../../../db/queries/parts/labels.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { labelSettings as labelSettingsTable } from '../../../db/schema/index.ts';
import { formatMoney } from '../../../shared/money/format.ts';
import { drawLabels, unreadableNumbers } from '../../paper/index.ts';
import { os } from '../implementer.ts';
import { shopHead } from '../papers/head.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

/** There is one set of label settings in a store. */
const ONLY = 1;

const labelSettings = os.parts.labelSettings.handler(({ context }) =>
  labelSettingsOf(context.store.read),
);

const setLabelSettings = os.parts.setLabelSettings.handler(({ input, context, path }) =>
  write(context, path, input.by, ({ store, note }) => {
    const { showPrice, ...laidOut } = input.settings;
    const row = { settings: JSON.stringify(laidOut), showPrice };
    store
      .insert(labelSettingsTable)
      .values({ only: ONLY, ...row })
      .onConflictDoUpdate({ target: labelSettingsTable.only, set: row })
      .run();
    note({ settings: JSON.stringify(input.settings) });
    return labelSettingsOf(store);
  }),
);

const labelFile = os.parts.labelFile.handler(({ input, context: { store, now }, errors }) => {
  const { sort, form, startAt } = input;
  const shop = shopOf(store.read);
  const settings = labelSettingsOf(store.read);
  const perSheet = settings.sheet.rows * settings.sheet.columns;
  if (form === 'sheet' && startAt > perSheet)
    throw errors.NO_SUCH_LABEL({ data: { labels: perSheet } });
  const labels = input.labels.flatMap(({ partId, copies }) => {
    const { number, description, bin, sellsAt } = found(partById(store.read, partId), 'part');
    const price = settings.showPrice ? formatMoney(sellsAt, shop.currency, shop.locale) : '';
    return Array.from({ length: copies }, () => ({ number, description, bin, price }));
  });
  const job = { sort, form, startAt, settings, labels };
  const numbers = unreadableNumbers(job);
  if (numbers.length > 0) throw errors.LABEL_TOO_SMALL({ data: { numbers } });
  const at = now().toISOString();
  const { pdf, pages } = drawLabels(shopHead({ shop, at, staff: { name: '' } }, ''), job);
  return {
    fileName: `${sort}-labels.pdf`,
    pages,
    pdf: Buffer.from(pdf).toString('base64'),
  };
});

/** Labels for shelves and parts. */
export const labels = { labelSettings, setLabelSettings, labelFile };

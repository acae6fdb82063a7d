/** What each writing call did, in words. A call that is not listed is shown by its own name. */
const DONE: Record<string, string> = {
  'counter.addCustomer': 'Added a customer',
  'counter.reviseCustomer': 'Changed a customer',
  'counter.addMachine': 'Added a machine',
  'counter.takeIn': 'Took a machine in',
  'counter.moveJob': 'Moved a job',
  'counter.handOver': 'Handed a machine over',
  'bench.chooseEngineModel': 'Chose the engine model',
  'bench.record': 'Recorded a reading',
  'bench.passHoldPoint': 'Passed a step of the build',
  'bench.overrideHoldPoint': 'Overrode a step of the build',
  'bench.reopenHoldPoint': 'Reopened a step of the build',
  'bench.beginBuild': 'Began a build',
  'bench.reviseBuildSheet': 'Revised a build sheet',
  'bench.pullBolt': 'Pulled a bolt',
  'bench.beginTorqueAnew': 'Began tightening anew',
  'bench.addPhoto': 'Added a photo',
  'bench.addGauge': 'Added a gauge',
  'bench.measureWrench': 'Measured a torque wrench’s length',
  'bench.checkGauge': 'Checked a gauge',
  'bench.noteFinding': 'Noted what the diagnosis found',
  'bench.decide': 'Decided on a part',
  'bench.recordTestRun': 'Recorded a test run',
  'bench.printClearanceSheet': 'Printed a clearance sheet',
  'specbook.addModel': 'Added an engine model',
  'specbook.addSource': 'Added a source',
  'specbook.addSpecification': 'Entered a specification',
  'specbook.confirm': 'Confirmed a specification',
  'specbook.contradict': 'Entered what another source says',
  'specbook.importModel': 'Took in an engine model from a file',
  'specbook.addSourceFile': 'Added the file of a source',
  'parts.add': 'Added a part',
  'parts.move': 'Moved stock',
  'parts.amend': 'Changed a part',
  'parts.putRight': 'Put a shelf right',
  'parts.addNumber': 'Added a number to a part',
  'parts.dropNumber': 'Took a number off a part',
  'parts.supersede': 'Said what took a part’s place',
  'parts.setFits': 'Said what a part fits',
  'parts.setPieces': 'Said what is in a kit',
  'parts.openKit': 'Opened a kit',
  'parts.addPhoto': 'Added a photo of a part',
  'parts.issue': 'Issued a part to a job',
  'parts.takeBack': 'Took an unused part back',
  'parts.moveByParts': 'Moved a job because of its parts',
  'parts.readPriceFile': 'Began to read a supplier’s price file',
  'parts.stopPriceFile': 'Stopped a supplier’s price file',
  'parts.applyPriceFile': 'Applied a supplier’s price file',
  'parts.undoPriceFile': 'Undid a supplier’s price file',
  'parts.reprice': 'Changed a part’s price',
  'parts.addSupplier': 'Added a supplier',
  'parts.reviseSupplier': 'Changed a supplier',
  'parts.placeOrder': 'Ordered from a supplier',
  'parts.receive': 'Received parts on an order',
  'parts.closeShort': 'Closed an order short',
  'parts.takeInCore': 'Took in an old part',
  'parts.sendCoreBack': 'Sent an old part back to a supplier',
  'parts.settleCore': 'Noted what a supplier did about an old part',
  'parts.openCount': 'Began counting a bin',
  'parts.countPart': 'Counted a part',
  'parts.closeCount': 'Closed the count of a bin',
  'parts.explainDifference': 'Explained a difference of a count',
  'parts.dropCount': 'Gave up the count of a bin',
  'parts.setLabelSettings': 'Changed how labels are laid out',
  'till.setRules': 'Changed prices and limits',
  'till.setCustomerTerms': 'Changed a customer’s terms',
  'till.setStaffCost': 'Set what somebody’s hour costs',
  'till.saveBundle': 'Kept a bundle of lines',
  'till.retireBundle': 'Retired a bundle of lines',
  'till.writeEstimate': 'Wrote an estimate',
  'till.approve': 'Noted an approval',
  'till.overrideLimit': 'Let a bill pass the approved amount',
  'till.issueInvoice': 'Issued an invoice',
  'till.creditInvoice': 'Issued a credit note',
  'till.takePayment': 'Took a payment',
  'till.takeAccountPayment': 'Took a payment over several jobs',
  'till.spendCredit': 'Set what was left over of one job against another',
  'till.clockOn': 'Clocked on',
  'till.clockOff': 'Clocked off',
  'till.enterHours': 'Entered hours',
  'till.correctHours': 'Corrected clocked hours',
  'till.strikeOutHours': 'Struck out clocked hours',
  'till.issueStatement': 'Issued a statement',
  'till.cashUp': 'Counted the drawer',
  'office.openShop': 'Opened the shop',
  'office.setShop': 'Changed the shop’s settings',
  'office.addStaff': 'Added somebody to the staff',
  'office.backUp': 'Asked for a back-up',
};

export const journalWords = (what: string): string => DONE[what] ?? what;

/** Longer than this is an id or a fingerprint: its beginning is enough to compare by eye. */
const LONG = 36;

/** The particulars of an entry as `name value` pairs; as it is when it is not a JSON object. */
export function journalFacts(detail: string): { name: string; value: string }[] {
  try {
    const facts: unknown = JSON.parse(detail);
    if (typeof facts !== 'object' || facts === null) return [];
    return Object.entries(facts)
      .filter(([, value]) => value !== '' && value !== null && value !== true)
      .map(([name, value]) => ({ name: spaced(name), value: short(value) }));
  } catch {
    return detail === '' ? [] : [{ name: '', value: detail }];
  }
}

const spaced = (name: string): string =>
  name.replace(/(?<=[a-z])[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

function short(value: unknown): string {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length >= LONG && /^[0-9a-f-]+$/.test(text) ? `${text.slice(0, 13)}…` : text;
}

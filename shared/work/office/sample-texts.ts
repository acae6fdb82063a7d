/**
 * Samples of the shop's own words on its papers, to begin from: ours, read by no lawyer, and marked as samples by
 * the brackets that are to be filled in.
 */
export const SAMPLE_TEXTS = {
  claimTerms: `[Sample: edit before use.]
We keep your machine with care. What is left in or with it is listed on this ticket; we are not liable for what is not listed.
Fuel that is old or unsafe is drained and disposed of under local rules.
When the work is done we tell you. From [15] days after that we charge storage of [5.00] a day.
A machine that is not collected is dealt with as local law provides, after written notice.`,
  estimateTerms: `[Sample: edit before use.]
This estimate is valid until the date shown.
If we find more work, we stop and ask you before we go on. You pay no more than you approved, plus tax.
If you decide against the work, you pay the diagnosis fee that was agreed, and get the machine back as it is [reassembled / not reassembled].
Replaced parts are returned to you if you ask for them before the work begins.`,
  invoiceTerms: `[Sample: edit before use.]
Payment is due when you collect the machine, unless you have an account with us.
We accept [cash, card and bank transfer].`,
  warranty: `[Sample: edit before use.]
We warrant our work and the parts that we supplied for [90] days from handover.
It does not cover wear, stale fuel, lack of oil, damage from outside, or work done by others since.
Bring the machine back to us first; we repair what is covered at no charge.`,
} as const;

/** Whether a text still says that it is a sample. */
export const isSample = (text: string): boolean => text.includes('[Sample: edit before use.]');

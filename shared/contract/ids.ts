import { z } from 'zod';

/**
 * Ids are opaque (a UUID, version 7, so that they sort by age); the brand keeps a customer's id from
 * being handed in where a job's is meant.
 */
const id = <B extends string>(_brand: B) => z.uuid().brand<B>();

export const CustomerId = id('CustomerId');
export type CustomerId = z.infer<typeof CustomerId>;
export const MachineId = id('MachineId');
export type MachineId = z.infer<typeof MachineId>;
export const EngineId = id('EngineId');
export type EngineId = z.infer<typeof EngineId>;
export const JobId = id('JobId');
export type JobId = z.infer<typeof JobId>;
export const PromiseId = id('PromiseId');
export type PromiseId = z.infer<typeof PromiseId>;
export const StaffId = id('StaffId');
export type StaffId = z.infer<typeof StaffId>;
export const EngineModelId = id('EngineModelId');
export type EngineModelId = z.infer<typeof EngineModelId>;
export const SourceId = id('SourceId');
export type SourceId = z.infer<typeof SourceId>;
export const SourceFileId = id('SourceFileId');
export type SourceFileId = z.infer<typeof SourceFileId>;
export const SpecificationId = id('SpecificationId');
export type SpecificationId = z.infer<typeof SpecificationId>;
export const GaugeId = id('GaugeId');
export type GaugeId = z.infer<typeof GaugeId>;
export const ReadingId = id('ReadingId');
export type ReadingId = z.infer<typeof ReadingId>;
export const FindingId = id('FindingId');
export type FindingId = z.infer<typeof FindingId>;
export const DecisionId = id('DecisionId');
export type DecisionId = z.infer<typeof DecisionId>;
export const PartId = id('PartId');
export type PartId = z.infer<typeof PartId>;
export const OtherNumberId = id('OtherNumberId');
export type OtherNumberId = z.infer<typeof OtherNumberId>;
export const SupplierId = id('SupplierId');
export type SupplierId = z.infer<typeof SupplierId>;
export const PriceFileId = id('PriceFileId');
export type PriceFileId = z.infer<typeof PriceFileId>;
export const PurchaseOrderId = id('PurchaseOrderId');
export type PurchaseOrderId = z.infer<typeof PurchaseOrderId>;
export const PurchaseOrderLineId = id('PurchaseOrderLineId');
export type PurchaseOrderLineId = z.infer<typeof PurchaseOrderLineId>;
export const StockCountId = id('StockCountId');
export type StockCountId = z.infer<typeof StockCountId>;
export const EstimateId = id('EstimateId');
export type EstimateId = z.infer<typeof EstimateId>;
export const InvoiceId = id('InvoiceId');
export type InvoiceId = z.infer<typeof InvoiceId>;
export const PaymentId = id('PaymentId');
export type PaymentId = z.infer<typeof PaymentId>;
export const CreditNoteId = id('CreditNoteId');
export type CreditNoteId = z.infer<typeof CreditNoteId>;
export const ReceiptId = id('ReceiptId');
export type ReceiptId = z.infer<typeof ReceiptId>;
export const BundleId = id('BundleId');
export type BundleId = z.infer<typeof BundleId>;
export const ClockEntryId = id('ClockEntryId');
export type ClockEntryId = z.infer<typeof ClockEntryId>;
export const PaperId = id('PaperId');
export type PaperId = z.infer<typeof PaperId>;
export const PhotoId = id('PhotoId');
export type PhotoId = z.infer<typeof PhotoId>;
export const LongWorkId = id('LongWorkId');
export type LongWorkId = z.infer<typeof LongWorkId>;
export const UploadId = id('UploadId');
export type UploadId = z.infer<typeof UploadId>;

/** What the barcode on a tag says: `J` and the job's number in six digits. */
export const JobCode = z
  .string()
  .regex(/^J\d{6}$/, 'A job code is J and six digits, as on the tag.');
export type JobCode = z.infer<typeof JobCode>;

/** The code of a job's number (1 to 999,999). */
export const jobCode = (number: number): JobCode => `J${String(number).padStart(6, '0')}`;

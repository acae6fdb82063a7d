import type { PaperId } from '../../shared/contract/ids.ts';
import { paperBytes, printPaper, savePaper } from './connection/papers.ts';
import { desk } from './desk.ts';

/** What can be done with an issued paper; each fetches it byte for byte as it was issued. */
export type PaperAction = (id: PaperId) => Promise<void>;

export const savePaperFile: PaperAction = async (id) => {
  const paper = await desk.office.paper({ id });
  await savePaper(paper.fileName, paperBytes(paper.pdf));
};

export const printPaperFile: PaperAction = async (id) => {
  const paper = await desk.office.paper({ id });
  await printPaper(paperBytes(paper.pdf));
};

/** In a browser only: the program's own window opens no others. */
export const openPaperFile: PaperAction = async (id) => {
  const paper = await desk.office.paper({ id });
  const pdf = new Blob([paperBytes(paper.pdf)], { type: 'application/pdf' });
  const address = URL.createObjectURL(pdf);
  window.open(address, '_blank');
  // Long enough for a slow machine to load it; short enough not to pile up over a day.
  setTimeout(() => URL.revokeObjectURL(address), 120_000);
};

export const opensPapers = (): boolean => window.tappetDesktop === undefined;

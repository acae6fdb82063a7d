import { useMutation } from '@tanstack/react-query';
import type { AgeBasis } from '../../../shared/money/books/index.ts';
import type { ReportName } from '../../../shared/work/reports.ts';
import { paperBytes, savePaper } from '../../common/connection/papers.ts';
import { desk } from '../../common/desk.ts';
import { saveFile } from '../../common/save-file.ts';

interface Asked {
  report: ReportName;
  from: string;
  to: string;
  basis: AgeBasis;
}

type Form = { form: 'pdf' } | { form: 'csv'; table: string; mark: boolean };

/** Keeps a report as a file: the whole as PDF, or one of its tables as CSV. */
export function useSaveReport(asked: Asked) {
  return useMutation({
    mutationFn: async (form: Form) => {
      const file = await desk.till.reportFile({ ...asked, ...form });
      const bytes = paperBytes(file.bytes);
      if (form.form === 'pdf') await savePaper(file.fileName, bytes);
      else saveFile(file.fileName, bytes, file.mediaType);
    },
  });
}

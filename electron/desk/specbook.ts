import { exportModel, importModel, previewImport } from './specbook/exchange/exchange.ts';
import { addModel, model, models } from './specbook/models.ts';
import { addSourceFile, sourceFile, sourceFiles } from './specbook/source-files.ts';
import { addSource, sources } from './specbook/sources.ts';
import {
  addSpecification,
  confirm,
  contradict,
  revisions,
  torquesOfThread,
} from './specbook/specifications.ts';

export const specbook = {
  models,
  model,
  revisions,
  torquesOfThread,
  addModel,
  sources,
  addSource,
  addSpecification,
  confirm,
  contradict,
  exportModel,
  previewImport,
  importModel,
  sourceFiles,
  sourceFile,
  addSourceFile,
};

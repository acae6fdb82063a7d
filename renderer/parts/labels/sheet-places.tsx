import {
  type LabelSheet,
  labelPlaces,
  PAPER_SIZES,
} from '../../../shared/work/parts/label-layout.ts';
import classes from './labels.module.css';

interface SheetPlacesProps {
  sheet: LabelSheet;
  /** The first label that is still there, from 1. */
  startAt: number;
  count: number;
  onStart: (label: number) => void;
}

/** The sheet in small: which labels are gone, which are printed next. A click says where to begin. */
export function SheetPlaces({ sheet, startAt, count, onStart }: SheetPlacesProps) {
  const { width, height } = PAPER_SIZES[sheet.paper];
  const share = (length: number, whole: number) => `${(length / whole) * 100}%`;
  // For the mouse alone: the field above says the same by the keyboard and to a screen reader.
  return (
    <div
      className={classes.sheet}
      style={{ aspectRatio: `${width} / ${height}` }}
      aria-hidden="true"
    >
      {labelPlaces(sheet, sheet.rows * sheet.columns, 1).map(({ x, y }, index) => (
        <button
          type="button"
          tabIndex={-1}
          key={`${x} ${y}`}
          className={classes.place}
          data-gone={index + 1 < startAt}
          data-used={index + 1 >= startAt && index + 1 < startAt + count}
          style={{
            left: share(x, width),
            top: share(y, height),
            width: share(sheet.labelWidth, width),
            height: share(sheet.labelHeight, height),
          }}
          onClick={() => onStart(index + 1)}
        >
          {index + 1}
        </button>
      ))}
    </div>
  );
}

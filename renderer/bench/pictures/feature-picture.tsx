import type { ReactNode } from 'react';
import type { FeatureOnSheet } from '../../../shared/contract/bench/index.ts';
import { BoltPicture } from '../../common/measure/bolt-picture.tsx';
import { BorePicture, type PictureProps } from './bore-picture.tsx';
import { CoilPicture } from './coil-picture.tsx';
import { PinPicture } from './pin-picture.tsx';
import { RingPicture } from './ring-picture.tsx';

/** The picture that shows where to measure now; null for a feature that has one place and needs none. */
export function featurePicture(feature: FeatureOnSheet, picture: PictureProps): ReactNode {
  switch (feature.feature) {
    case 'bore':
      return <BorePicture {...picture} />;
    case 'coil-air-gap':
      return <CoilPicture {...picture} />;
    case 'crankpin':
      return <PinPicture {...picture} />;
    case 'ring-end-gap':
      return <RingPicture {...picture} />;
    case 'head-bolt-torque': {
      const fastener = feature.specification?.fastener ?? null;
      return fastener === null ? null : <BoltPicture fastener={fastener} />;
    }
    default:
      return null;
  }
}

/** A place's spot on the picture: its key without the cylinder. */
export const spotOf = (placeKey: string): string => placeKey.replace(/^c\d+-/, '');

import type { ReactNode } from 'react';
import type { FeatureOnSheet } from '../../../shared/contract/bench/index.ts';
import { BoltPicture } from '../../common/measure/bolt-picture.tsx';
import { BorePicture, type PictureProps } from './bore-picture.tsx';
import { ChamberPicture } from './chamber-picture.tsx';
import { CoilPicture } from './coil-picture.tsx';
import { CrankshaftPicture } from './crankshaft-picture.tsx';
import { FacePicture } from './deck-picture.tsx';
import { PinPicture } from './pin-picture.tsx';
import { RingPicture } from './ring-picture.tsx';
import { ValvePicture, valvePartOf } from './valve-picture.tsx';

/** The picture that shows where to measure now; null for a feature that has one place and needs none. */
export function featurePicture(feature: FeatureOnSheet, picture: PictureProps): ReactNode {
  const part = valvePartOf(feature.feature);
  if (part !== undefined) return <ValvePicture {...picture} part={part} />;
  switch (feature.feature) {
    case 'bore':
      return <BorePicture {...picture} />;
    case 'coil-air-gap':
      return <CoilPicture {...picture} />;
    case 'crankpin':
      return <PinPicture {...picture} />;
    case 'main-journal':
      return <CrankshaftPicture {...picture} />;
    case 'ring-end-gap':
    case 'ring-side-clearance':
      return <RingPicture {...picture} />;
    case 'head-flatness':
      return <FacePicture {...picture} face="Head" />;
    case 'deck-flatness':
      return <FacePicture {...picture} face="Deck" />;
    case 'chamber-volume':
      return <ChamberPicture {...picture} part="chamber" />;
    case 'gasket-thickness':
      return <ChamberPicture {...picture} part="gasket" />;
    case 'deck-clearance':
      return <ChamberPicture {...picture} part="deck" />;
    case 'head-bolt-torque':
    case 'rod-bolt-torque':
    case 'sump-bolt-torque': {
      const fastener = feature.specification?.fastener ?? null;
      return fastener === null ? null : <BoltPicture fastener={fastener} />;
    }
    default:
      return null;
  }
}

/** A place's spot on the picture: its key without the cylinder. */
export const spotOf = (placeKey: string): string => placeKey.replace(/^c\d+-/, '');

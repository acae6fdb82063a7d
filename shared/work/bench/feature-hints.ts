import type { MeasuredFeature } from '../features.ts';

/** How to take the reading, in a sentence, with the caution that belongs to it. */
export const FEATURE_HINTS: Record<MeasuredFeature, string> = {
  bore: 'At three depths, along the crankshaft and across it. Wipe the bore dry and let it come to room temperature.',
  'piston-skirt': 'Across the thrust faces, at the height that the source names.',
  'ring-end-gap': 'Ring squared in the bore with the piston crown, below the ridge.',
  crankpin: 'At two directions a quarter turn apart.',
  'rod-big-end': 'Cap fitted the right way round and tightened to its figure.',
  'crankshaft-end-play': 'Dial indicator on the end of the shaft, pushed home and pulled.',
  'head-flatness':
    'Straightedge and the thickest leaf that slides under, six directions; note the worst.',
  'coil-air-gap':
    'Plug lead off and earthed. Magnet under the coil, leaf in at each leg while the screws are tightened.',
  'valve-lash-intake': 'Cold, on the compression stroke, at or just past top dead centre.',
  'valve-lash-exhaust': 'Cold, on the compression stroke, at or just past top dead centre.',
  'plug-gap': 'Round wire gauge; bend the side electrode only.',
  'head-bolt-torque':
    'In the order and the stages given, smooth pull, threads as the source asks (dry or oiled).',
  compression:
    'Plug lead earthed, throttle open, battery or arm at its usual speed. A compression release lowers the figure.',
  'coil-resistance': 'Leads disconnected; note the temperature.',
  'ring-side-clearance':
    'Ring in its clean groove, leaf beside it; the largest leaf that slides in.',
  'main-journal': 'Each side where the bearing runs, at two directions a quarter turn apart.',
  'camshaft-end-play':
    'Cover on with its gasket and tightened; dial indicator on the shaft, pushed home and pulled.',
  'deck-flatness':
    'Straightedge over the cylinder’s deck, scraped clean, six directions; note the worst.',
  'deck-clearance':
    'From the piston’s edge up to the deck at top dead centre; with a minus when it stands proud.',
  'gasket-thickness': 'Compressed: at the seal of the one that came out, or as its maker says.',
  'chamber-volume':
    'Valves and plug in, a clear plate with a hole greased on, filled from a burette. Not with fuel.',
  'valve-stem-intake': 'Where it runs in the guide, at the most worn spot.',
  'valve-stem-exhaust': 'Where it runs in the guide, at the most worn spot.',
  'valve-guide-intake': 'Cleaned of carbon, in the middle and near both ends; note the largest.',
  'valve-guide-exhaust': 'Cleaned of carbon, in the middle and near both ends; note the largest.',
  'valve-spring-length':
    'Standing free on a flat plate. Eye protection when it is taken off or put on.',
  'seat-width': 'The ground ring of the seat, all the way round; note the widest.',
  'valve-travel-intake':
    'Dial indicator on the retainer, along the stem; read it with the valve closed and fully open. Plug lead earthed.',
  'valve-travel-exhaust':
    'Dial indicator on the retainer, along the stem; read it with the valve closed and fully open. Plug lead earthed.',
  'rod-bolt-torque': 'Cap the right way round, threads as the source asks, both bolts by turns.',
  'sump-bolt-torque': 'Cover home without force, in the order given, smooth pull.',
  'flywheel-nut-torque':
    'Key seated, taper clean and dry, crankshaft held as the source says and never by a fin.',
  'plug-torque': 'Threads clean, screwed in by hand first; less in aluminium than in iron.',
};

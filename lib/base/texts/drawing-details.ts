/** Notes on the drawings of details. */

export const headOf = (id: string): string => `Head of ${id}`;
export const coursesCutToRing = 'courses cut to the ring, bedded in full mortar';
export const flashingUpDomeChased = (flash: string): string =>
  `flashing ${flash} up the dome, chased or under the render, sealed`;
export const filletOfMortarFalls = 'fillet of mortar, falls to both sides of the barrel';
export const mortarToFall1 = 'mortar to fall 1:40 outward over the flat top';
export const barrelRing = (ring: string): string => `barrel, ring ${ring}`;
export const reinforcedLintelEngineers = (ring: string): string => `reinforced lintel ${ring}: the engineer’s`;
export const renderWithDrip = 'render with a drip at the head';
export const ringFlushWithWall = (ring: string): string => `ring ${ring}, flush with the wall`;
export const frameFixedToPlugs = (frame: string): string =>
  `frame ${frame}, fixed to plugs in the jambs, sealed both sides`;
export const headLevel = 'head';
export const topOfRing = 'top of ring';
export const ringSize = 'ring ';
export const uprightSize = 'upright ';
export const centeringStaysUnderRing = 'Centering stays under the ring until it has its strength.';
export const springingOf = (id: string): string => `Springing of ${id}`;
export const jambCastOrLaid = (ring: string): string => `jamb ${ring}, cast or laid down to the footing`;
export const jambDownToSlab = (ring: string): string => `jamb ${ring}, cast or laid down to the slab`;
export const jambDownToFoot = (ring: string): string => `jamb ${ring}, cast or laid down to the foot of the wall`;
export const bearingOfLintelEngineers = 'bearing of the lintel: the engineer’s';
export const springingRingAndJamb = 'springing: ring and jamb in one, or a rough, clean joint';
export const coursesOfBlocksCut = 'courses of blocks cut to the jamb';
export const jointFilledTies = (joint: string): string => `joint ${joint}, filled; ties as the engineer asks`;
export const springingOfHead = 'springing of the head';
export const cutSquareToOpenings = 'Cut square to the opening’s axis, in the middle of the wall.';
export const curbOf = (id: string): string => `Curb of ${id}`;
export const skylightByItsMaker = 'skylight by its maker: guarded or safe to fall on, laid to shed water';
export const frameScrewedToPlugs = (flange: string): string =>
  `frame screwed to plugs in the curb, flange ${flange} down outside, sealed`;
export const curbCastInOne = 'curb cast in one ring; its steel is the engineer’s, for it takes the thrust of the crown';
export const flashingUpCurbChased = (upturn: string): string =>
  `flashing ${upturn} up the curb, chased and sealed, dressed over the render`;
export const lastCourseItsUpper = 'last course, its upper bed square to the wall';
export const curbSize = 'curb ';
export const topOfCurb = 'top of curb';
export const edgeOfOculus = 'edge of oculus';
export const centreLineOfDome = 'The centre line of the dome lies to the left, off the detail.';
export const crownPlug = (id: string): string => `Crown plug of ${id}`;
export const crownPlugCast = 'crown plug, cast in place on a form or lifted with a hoist';
export const bedOfMortarSquare = 'bed of mortar, square to the wall; the ring below is closed first';
export const lastCourseOfBlocks = 'last course of blocks';
export const renderWithMeshCarried = 'render with mesh carried over the joint without a break';
export const intradosSize = 'intrados ';
export const extradosSize = 'extrados ';
export const topOfMasonry = 'top of masonry';
export const crownIntrados = 'crown, intrados';
export const sizesAreRadii = 'Sizes are radii from the axis, where the centre line stands.';
export const commonPracticeOfMasonry =
  'Common practice of masonry and shell building, no source; local code and licensed practice govern.';
export const ringTie = (id: string): string => `Ring tie of ${id}`;
export const barsClosedHoop = (bars: number, diameter: string, level: string): string =>
  `${bars} bars ${diameter}, a closed hoop, ${level}`;
export const tiedIntoCage = 'tied into the cage of the footing';
export const bedCutOut = 'beds cut out to take the bars, filled with mortar that covers them on all sides';
export const lapsAsEngineerGives = 'laps as the engineer gives them, staggered';
export const lapsStaggeredQuarter = (lap: string): string => `laps ${lap}, staggered a quarter of the ring`;
export const againstRustStainlessGalvanised =
  'against rust: stainless, galvanised or in dense mortar, as the engineer asks';
export const tieCrossesNoOpening =
  'The tie crosses no opening and no passage; it is closed before the course over it is laid.';
export const abutmentOf = (id: string, earlierId: string): string => `Abutment of ${id} on ${earlierId}`;
export const itsShellStaysWhole = (id: string): string => `${id}: its shell stays whole`;
export const flashingUpBothShells = (flash: string): string =>
  `flashing ${flash} up both shells, under the render, over a fillet of mortar`;
export const fallsFromHereBoth = (onRing: boolean): string =>
  `${onRing ? 'gutter on the passage’s ring' : 'valley'} falls from here both ways, at least 1:40, with no dam at its ends`;
export const cutAgainst = (id: string): string => `${id}: cut against it`;
export const movementJointCompressibleStrip = (joint: string): string =>
  `movement joint ${joint}: compressible strip, sealed outside on a backing rod`;
export const passageRing = (id: string, ring: string): string => `passage ${id}, ring ${ring}`;
export const valleyHighest = 'valley, highest';
export const headOfPassage = 'head of passage';
export const engineerSaysWhetherDomes =
  'The engineer says whether the domes are tied to one another or kept apart by the joint.';
export const passageAt = (id: string, domeId: string): string => `Passage ${id} at ${domeId}`;
export const flashingUpDome = (flash: string): string =>
  `flashing ${flash} up the dome and along the passage, under the render`;
export const filletFallsToBothSides = 'fillet of mortar, falls to both sides';
export const vaultOfPassageRing = (ring: string): string => `vault of the passage, ring ${ring}`;
export const coursesOfCut = (id: string): string => `courses of ${id} cut to the ring`;
export const movementJointRoundRing = (joint: string): string =>
  `movement joint ${joint} round the ring: compressible strip, sealed both faces`;
export const engineerSaysWhereMovement =
  'The engineer says where a movement joint serves, and where ring and shell are bonded.';
export const wallFoot = 'Wall foot';
export const wallOfCastBlocks = (thickness: string): string => `wall of cast blocks ${thickness}`;
export const outsideRenderStopped = (renderOutside: string, splash: string): string =>
  `outside render ${renderOutside}, stopped on a bead ${splash} above ground`;
export const insideRender = (renderInside: string): string => `inside render ${renderInside}`;
export const dampProofCourseOver = (lap: string): string =>
  `damp-proof course over the whole wall, laps ${lap}, on a smooth bed`;
export const groundFalls120 = (falling: string): string => `ground falls 1:20 away from the wall for ${falling}`;
export const concreteSlabStrip = (thickness: string): string =>
  `concrete slab ${thickness}; strip of compressible filler at its edge`;
export const concreteSlabCarries = (thickness: string): string =>
  `concrete slab ${thickness}, which carries the wall; its bars are the engineer’s`;
export const sheetAgainstDampLapped = 'sheet against damp, lapped into the damp-proof course';
export const freeDrainingFillCompacted = (fill: string): string => `free-draining fill ${fill}, compacted`;
export const concreteFootingBars = 'concrete footing; bars and laps are the engineer’s';
export const landDrainFall1 = (pipe: string): string => `land drain ${pipe}, fall 1:100 to an outlet`;
export const gravelInFilterSheet = 'gravel in a filter sheet';
export const trenchKeepsOff = 'The trench of the drain keeps as far off what the wall stands on as it goes below that.';
export const finishedFloor = 'finished floor';
export const ground = 'ground';
export const undersideOfSlab = 'underside of slab';
export const soleOfFooting = 'sole of footing';
export const dampProofCourseCarries =
  'The damp-proof course carries the wall: one that the engineer allows for the thrust and slip in it. Where the ground stands higher than the floor, the wall needs tanking, which is not shown.';

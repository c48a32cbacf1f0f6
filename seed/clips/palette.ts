import type { ClipLight, ClipParameters } from "./clip-parameters";

/** Red, green and blue, 0 to 255. */
export type Colour = readonly [number, number, number];

/** The colours of the lane under one light. */
export type LightColours = {
  readonly wallTop: Colour;
  readonly wallFoot: Colour;
  /** The padding along the foot of the walls. */
  readonly pad: Colour;
  readonly floorFar: Colour;
  readonly floorNear: Colour;
  readonly mound: Colour;
  readonly chalkLine: Colour;
  readonly net: Colour;
  readonly window: Colour;
  /** What the figure's shaded sides and far limbs fade into. */
  readonly shade: Colour;
  /** Opacity of the shadow under the figure. */
  readonly shadow: number;
};

/** The colours one pitcher wears. */
export type KitColours = {
  readonly cap: Colour;
  readonly jersey: Colour;
  readonly sleeve: Colour;
  readonly trousers: Colour;
  readonly socks: Colour;
  readonly shoes: Colour;
  readonly glove: Colour;
  readonly skin: Colour;
  readonly hair: Colour;
};

const LIGHTS: Record<ClipLight, LightColours> = {
  chalk: {
    wallTop: [236, 230, 215],
    wallFoot: [219, 211, 193],
    pad: [138, 150, 166],
    floorFar: [152, 172, 140],
    floorNear: [118, 146, 112],
    mound: [168, 112, 82],
    chalkLine: [250, 248, 243],
    net: [120, 122, 118],
    window: [214, 229, 238],
    shade: [58, 62, 76],
    shadow: 0.26,
  },
  clay: {
    wallTop: [240, 214, 190],
    wallFoot: [214, 172, 142],
    pad: [120, 92, 88],
    floorFar: [164, 146, 104],
    floorNear: [132, 120, 84],
    mound: [158, 88, 58],
    chalkLine: [252, 242, 230],
    net: [128, 98, 80],
    window: [250, 226, 190],
    shade: [74, 48, 48],
    shadow: 0.3,
  },
  grass: {
    wallTop: [206, 222, 214],
    wallFoot: [158, 188, 168],
    pad: [66, 104, 92],
    floorFar: [104, 150, 104],
    floorNear: [66, 118, 78],
    mound: [162, 110, 76],
    chalkLine: [246, 248, 240],
    net: [72, 96, 84],
    window: [226, 240, 236],
    shade: [32, 58, 54],
    shadow: 0.3,
  },
  dusk: {
    wallTop: [112, 124, 156],
    wallFoot: [164, 150, 160],
    pad: [72, 80, 112],
    floorFar: [88, 104, 104],
    floorNear: [62, 80, 82],
    mound: [132, 88, 74],
    chalkLine: [226, 224, 226],
    net: [66, 74, 98],
    window: [244, 186, 146],
    shade: [38, 40, 66],
    shadow: 0.34,
  },
  ink: {
    wallTop: [36, 45, 56],
    wallFoot: [56, 68, 80],
    pad: [40, 50, 64],
    floorFar: [48, 72, 66],
    floorNear: [34, 54, 50],
    mound: [108, 72, 56],
    chalkLine: [206, 206, 196],
    net: [92, 106, 118],
    window: [22, 28, 44],
    shade: [16, 20, 30],
    shadow: 0.42,
  },
};

const SKINS: readonly Colour[] = [
  [226, 182, 150],
  [172, 120, 86],
  [206, 156, 116],
  [116, 78, 58],
  [236, 198, 170],
];

const HAIRS: readonly Colour[] = [
  [74, 52, 40],
  [30, 26, 26],
  [128, 92, 56],
  [24, 22, 24],
  [158, 98, 58],
];

type Worn = Omit<KitColours, "skin" | "hair">;

const KITS: readonly Worn[] = [
  {
    cap: [36, 58, 96],
    jersey: [248, 246, 240],
    sleeve: [36, 58, 96],
    trousers: [226, 226, 224],
    socks: [36, 58, 96],
    shoes: [34, 36, 44],
    glove: [146, 88, 48],
  },
  {
    cap: [44, 106, 68],
    jersey: [52, 118, 78],
    sleeve: [240, 238, 230],
    trousers: [242, 240, 234],
    socks: [44, 106, 68],
    shoes: [40, 40, 42],
    glove: [176, 116, 62],
  },
  {
    cap: [150, 58, 40],
    jersey: [163, 70, 44],
    sleeve: [58, 58, 66],
    trousers: [206, 206, 208],
    socks: [58, 58, 66],
    shoes: [48, 42, 42],
    glove: [98, 62, 42],
  },
  {
    cap: [58, 62, 74],
    jersey: [110, 128, 156],
    sleeve: [44, 48, 60],
    trousers: [238, 238, 236],
    socks: [58, 62, 74],
    shoes: [30, 32, 38],
    glove: [60, 52, 50],
  },
];

/** The colours of the lane under a light. */
export function lightColours(light: ClipLight): LightColours {
  return LIGHTS[light];
}

/** What the pitcher of a clip wears and looks like; kit numbers go round. */
export function kitColours({ kit }: Pick<ClipParameters, "kit">): KitColours {
  return { ...roundOf(KITS, kit), skin: roundOf(SKINS, kit), hair: roundOf(HAIRS, kit) };
}

/** A colour on the way from one (share 0) to another (share 1). */
export function blend(from: Colour, to: Colour, share: number): Colour {
  const part = (n: 0 | 1 | 2) => Math.round(from[n] + (to[n] - from[n]) * share);
  return [part(0), part(1), part(2)];
}

/** A colour as a canvas takes it. */
export function ink(colour: Colour, opacity = 1): string {
  return `rgba(${colour[0]}, ${colour[1]}, ${colour[2]}, ${opacity})`;
}

function roundOf<Item>(items: readonly Item[], n: number): Item {
  const item = items[Math.floor(n) % items.length];
  if (item === undefined) throw new RangeError("nothing to choose from");
  return item;
}

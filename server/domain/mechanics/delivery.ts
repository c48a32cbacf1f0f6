/**
 * The parts of a delivery in the order in which they happen. Names as in Fleisig 2013 and the Clinician's Guide to
 * Baseball Pitching Biomechanics (Diffendaffer et al. 2023, Sports Health).
 */
export const DELIVERY_PHASES = [
  "wind_up",
  "stride",
  "arm_cocking",
  "acceleration",
  "deceleration",
  "follow_through",
] as const;

/** One part of a delivery. */
export type Phase = (typeof DELIVERY_PHASES)[number];

/**
 * The moments that bound the phases, in the order in which they happen. Foot contact to release takes about 0.145 s
 * (Seroyer et al. 2010, Sports Health), nine frames at 60 a second.
 */
export const DELIVERY_EVENTS = [
  "first_movement",
  "peak_knee_height",
  "front_foot_contact",
  "max_external_rotation",
  "ball_release",
  "finish",
] as const;

/** One moment of a delivery that is marked on a frame. */
export type DeliveryEvent = (typeof DELIVERY_EVENTS)[number];

/** Where the camera stands. The open side is the one the chest turns to: third base for a right-hander. */
export const CAMERA_VIEWS = ["front", "back", "open_side", "closed_side"] as const;

/** One place of the camera. */
export type CameraView = (typeof CAMERA_VIEWS)[number];

/** The phases as they are written on a screen. */
export const PHASE_WORDS: Record<Phase, string> = {
  wind_up: "Wind-up",
  stride: "Stride",
  arm_cocking: "Arm cocking",
  acceleration: "Acceleration",
  deceleration: "Deceleration",
  follow_through: "Follow-through",
};

/** The events as they are written on a screen. */
export const EVENT_WORDS: Record<DeliveryEvent, string> = {
  first_movement: "First movement",
  peak_knee_height: "Peak knee height",
  front_foot_contact: "Front foot contact",
  max_external_rotation: "Maximum external rotation",
  ball_release: "Ball release",
  finish: "Finish",
};

/** The camera views as they are written on a screen. */
export const CAMERA_VIEW_WORDS: Record<CameraView, string> = {
  front: "Front",
  back: "Back",
  open_side: "Open side",
  closed_side: "Closed side",
};

/**
 * The event at which a phase is opened on a clip. Follow-through begins at maximum internal rotation, which cannot be
 * seen on a phone's video, so it opens at the finish.
 */
export const EVENT_THAT_OPENS: Record<Phase, DeliveryEvent> = {
  wind_up: "first_movement",
  stride: "peak_knee_height",
  arm_cocking: "front_foot_contact",
  acceleration: "max_external_rotation",
  deceleration: "ball_release",
  follow_through: "finish",
};

/**
 * Whether a mark of this event is only approximate and may be left out. The shoulder turns about 117 degrees in one
 * frame at 60 a second (7000 degrees a second, computed), so maximum external rotation is never sure to a frame.
 */
export function isApproximate(event: DeliveryEvent): boolean {
  return event === "max_external_rotation";
}

/**
 * Some camera views as words in a sentence.
 * @example viewsInWords(["front", "back"]) // "front or back"
 */
export function viewsInWords(views: readonly CameraView[]): string {
  return views.map((view) => CAMERA_VIEW_WORDS[view].toLowerCase()).join(" or ");
}

/** Place of a phase in the delivery, 0 for the wind-up to 5 for the follow-through. */
export function phaseOrder(phase: Phase): number {
  return DELIVERY_PHASES.indexOf(phase);
}

/** Place of an event in the delivery, 0 for first movement to 5 for the finish. */
export function eventOrder(event: DeliveryEvent): number {
  return DELIVERY_EVENTS.indexOf(event);
}

export type Confirmation = {
  name: string;
  text: string;
  /** Mode, number | from > to by airport code or name | departure > arrival | "berth" and the fields that are asked. "?" where it is not known. */
  legs: readonly string[];
  /** Currency and minor units. */
  total?: string;
};

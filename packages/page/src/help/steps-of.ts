import type { Plan, PlanBeat, Step } from "@solvewright/engine";

/** What a beat of the running order gives, step by step. */
export const stepsOf = ({ steps }: Plan, beat: PlanBeat): Step[] => steps.filter(({ n }) => beat.steps.includes(n));

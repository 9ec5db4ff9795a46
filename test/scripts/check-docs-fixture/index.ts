export { raiseAlarm, silent } from './alarms/raise-alarm.ts';
export { bareFormula } from './probe/bare-formula.ts';
export { halve, halveAll } from './probe/halve.ts';
export { wrongExamples } from './probe/wrong-examples.ts';

export { LookBackPlace } from './look-back-place.tsx';

import { checked } from '../../solver/checked.ts';
import { rivetDiameter } from '../rivet-diameter.ts';
import { rivetTaken } from './parts/diameter.ts';

export const check = checked(rivetDiameter, rivetTaken);

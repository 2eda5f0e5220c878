import type { Criterion } from '../verdicts/criterion.ts';
import { guo2011Bcc } from './guo2011Bcc.ts';
import { guo2011Fcc } from './guo2011Fcc.ts';
import { guo2013 } from './guo2013.ts';
import { guoLiu2011 } from './guoLiu2011.ts';
import { highEntropy } from './highEntropy.ts';
import { king2016 } from './king2016.ts';
import { polettiBattezzati2014 } from './polettiBattezzati2014.ts';
import { senkovMiracle2016 } from './senkovMiracle2016.ts';
import { sheikh2016 } from './sheikh2016.ts';
import { singh2014 } from './singh2014.ts';
import { tsai2013 } from './tsai2013.ts';
import { wang2015 } from './wang2015.ts';
import { yangZhang2012 } from './yangZhang2012.ts';
import { ye2015 } from './ye2015.ts';
import { yurchenko2017 } from './yurchenko2017.ts';
import { zhang2008 } from './zhang2008.ts';

/**
 * Every criterion, in the order in which pages show them. Passing them all proves little: on published
 * alloys most are hardly better than a coin, which is why none is told without its record.
 */
export const criteria: readonly Criterion[] = [
  zhang2008,
  guoLiu2011,
  guo2013,
  yangZhang2012,
  singh2014,
  wang2015,
  ye2015,
  king2016,
  senkovMiracle2016,
  guo2011Fcc,
  guo2011Bcc,
  tsai2013,
  yurchenko2017,
  polettiBattezzati2014,
  sheikh2016,
  highEntropy,
];

import { type AbsolutePressure, type Density, type HeatCapacity, quantity, type Temperature } from "../units/index.ts";
import { gibbsDerivatives, gibbsTerms } from "./gibbs-terms.ts";
import { gasConstant } from "./regions.ts";

/** IAPWS R7-97, table 2: I, J, n. */
export const liquidTerms = gibbsTerms([
  [0, -2, 0.14632971213167],
  [0, -1, -0.84548187169114],
  [0, 0, -3.756360367204],
  [0, 1, 3.3855169168385],
  [0, 2, -0.95791963387872],
  [0, 3, 0.15772038513228],
  [0, 4, -0.016616417199501],
  [0, 5, 0.00081214629983568],
  [1, -9, 0.00028319080123804],
  [1, -7, -0.00060706301565874],
  [1, -1, -0.018990068218419],
  [1, 0, -0.032529748770505],
  [1, 1, -0.021841717175414],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.00047184321073267],
  [2, 0, -0.00030001780793026],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
]);

const pressureScale = quantity("absolute-pressure", 16.53, "MPa");
const temperatureScale = 1386;

/** Density and heat capacity of liquid water, IAPWS R7-97 region 1, eq. 7 and table 3. The caller has checked the region. */
export function liquidWater(
  temperature: Temperature,
  pressure: AbsolutePressure,
): { readonly density: Density; readonly heatCapacity: HeatCapacity } {
  const tau = temperatureScale / temperature;
  const by = gibbsDerivatives(liquidTerms, 7.1 - pressure / pressureScale, tau - 1.222);
  return {
    density: (pressureScale / (-by.x * gasConstant * temperature)) as Density,
    heatCapacity: (-gasConstant * tau * tau * by.yy) as HeatCapacity,
  };
}

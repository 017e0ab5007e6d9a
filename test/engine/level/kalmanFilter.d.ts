/** The part of the general-purpose filter that the tests use; it ships no types. */
declare module 'kalman-filter' {
  type Matrix = number[][];
  export class State {
    constructor(state: { mean: Matrix; covariance: Matrix; index?: number });
    readonly mean: Matrix;
    readonly covariance: Matrix;
  }
  export class KalmanFilter {
    constructor(model: {
      observation: {
        dimension: number;
        stateProjection: (at: { index: number }) => Matrix;
        covariance: (at: { index: number }) => Matrix;
      };
      dynamic: {
        dimension: number;
        init: { mean: Matrix; covariance: Matrix; index: number };
        transition: (at: { index: number }) => Matrix;
        covariance: (at: { index: number }) => Matrix;
        constant: (at: { index: number }) => Matrix;
      };
    });
    predict(given: { previousCorrected: State; index: number }): State;
    correct(given: { predicted: State; observation: number[] }): State;
  }
}

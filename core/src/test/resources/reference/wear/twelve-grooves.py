# Writes twelve-grooves.csv: probability that the twelve grooves of a set are all above a limit, by Genz's algorithm (SciPy's
# multivariate_normal.cdf), for margins and covariances that the wear model's posterior gave after none to three seasons.
# Run: python3 twelve-grooves.py moments.csv > twelve-grooves.csv; moments.csv has 12 means and 144 covariances a line.
import sys
import numpy as np
import scipy
from scipy.stats import multivariate_normal

above = [(i, j) for i in range(12) for j in range(i + 1, 12)]
print(f"# SciPy {scipy.__version__}, multivariate_normal.cdf, maxpts 4e6, abseps 1e-5")
print(",".join([f"z{i + 1}" for i in range(12)] + [f"r{i + 1}_{j + 1}" for i, j in above] + ["probability"]))
for line in open(sys.argv[1]):
    numbers = np.array(line.split(","), float)
    mean, covariance = numbers[:12], numbers[12:].reshape(12, 12)
    sd = np.sqrt(np.diag(covariance))
    z = np.round(mean / sd, 4)
    correlation = np.eye(12)
    for i, j in above:
        correlation[i, j] = correlation[j, i] = round(covariance[i, j] / sd[i] / sd[j], 4)
    p = multivariate_normal(np.zeros(12), correlation, allow_singular=True, maxpts=4_000_000, abseps=1e-5, releps=1e-7).cdf(z)
    print(",".join([f"{x:.4f}" for x in z] + [f"{correlation[i, j]:.4f}" for i, j in above] + [f"{p:.5f}"]))

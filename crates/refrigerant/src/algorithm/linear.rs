//! Small dense systems of linear equations.

/// Solves A x = b for two right-hand sides in place by Gaussian elimination with scaled row pivoting.
///
/// Returns false where the matrix is singular or not finite. `N` is the room, `n` the size in use.
pub fn solve<const N: usize>(a: &mut [[f64; N]; N], b: &mut [[f64; 2]; N], n: usize) -> bool {
    for row in 0..n {
        let largest = a[row][..n].iter().fold(0.0f64, |m, v| m.max(v.abs()));
        if !(largest > 0.0 && largest.is_finite()) {
            return false;
        }
        let scale = 1.0 / largest;
        a[row][..n].iter_mut().for_each(|v| *v *= scale);
        b[row].iter_mut().for_each(|v| *v *= scale);
    }
    for k in 0..n {
        let mut pivot = k;
        for row in k + 1..n {
            if a[row][k].abs() > a[pivot][k].abs() {
                pivot = row;
            }
        }
        if a[pivot][k].is_nan() || a[pivot][k] == 0.0 {
            return false;
        }
        a.swap(k, pivot);
        b.swap(k, pivot);
        let inverse = 1.0 / a[k][k];
        for row in k + 1..n {
            let factor = a[row][k] * inverse;
            if factor != 0.0 {
                let (above, below) = a.split_at_mut(row);
                let pairs = below[0][k + 1..n].iter_mut().zip(&above[k][k + 1..n]);
                pairs.for_each(|(v, pivot)| *v -= factor * pivot);
                b[row][0] -= factor * b[k][0];
                b[row][1] -= factor * b[k][1];
            }
        }
    }
    for k in (0..n).rev() {
        let mut sum = b[k];
        for (v, known) in a[k][k + 1..n].iter().zip(&b[k + 1..n]) {
            sum[0] -= v * known[0];
            sum[1] -= v * known[1];
        }
        b[k] = sum.map(|s| s / a[k][k]);
    }
    b[..n].iter().flatten().all(|v| v.is_finite())
}

#[cfg(test)]
mod tests {
    use super::solve;

    #[test]
    fn solves_a_system_that_needs_pivoting() {
        let mut a = [[0.0, 2.0, 1.0], [1.0, 1e-9, 3.0], [4.0, 1.0, 0.0]];
        let mut b = [[7.0, 2.0], [10.0 + 2e-9, 1e-9], [6.0, 1.0]];
        assert!(solve(&mut a, &mut b, 3));
        for (got, want) in b.iter().zip([[1.0, 0.0], [2.0, 1.0], [3.0, 0.0]]) {
            assert!((got[0] - want[0]).abs() < 1e-12);
            assert!((got[1] - want[1]).abs() < 1e-12);
        }
    }

    #[test]
    fn refuses_a_singular_matrix() {
        let mut a = [[1.0, 2.0], [2.0, 4.0]];
        assert!(!solve(&mut a, &mut [[1.0, 0.0], [2.0, 0.0]], 2));
    }
}

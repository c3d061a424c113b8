//! calc

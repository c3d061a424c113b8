//! The interface.

# Sourced: `alone` goes before a command that starts a screen reader. One that starts ends every other one of the same user
# that it sees, so each gets processes of its own, or, where that is not allowed, its turn (`at_once` is 1 then).
# In a chroot nothing may be said of the mounts around, hence "unchanged"; only root may do without a user of its own.
alone=(unshare --pid --fork --kill-child --mount-proc --propagation unchanged)
[ "$(id -u)" = 0 ] || alone+=(--map-root-user)
at_once=$(nproc)
"${alone[@]}" true 2>/dev/null || { alone=() && at_once=1; }
